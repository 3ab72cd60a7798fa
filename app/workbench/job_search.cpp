#include "app/workbench/job_search.h"

#include <QString>
#include <QStringList>
#include <algorithm>
#include <tuple>

#include "app/convert/text.h"

namespace app::workbench {
namespace {

// Letters that no decomposition takes their stroke or ligature from.
QString plainLetter(QChar letter) {
  switch (letter.unicode()) {
    case 0x00E6: return QStringLiteral("ae");
    case 0x0153: return QStringLiteral("oe");
    case 0x00F8: return QStringLiteral("o");
    case 0x0111:
    case 0x00F0: return QStringLiteral("d");
    case 0x0142: return QStringLiteral("l");
    case 0x00FE: return QStringLiteral("th");
    case 0x0131: return QStringLiteral("i");
    case 0x00DF: return QStringLiteral("ss");
    default: return letter;
  }
}

// Words of letters and digits; everything else parts them.
QStringList wordsOf(std::string_view text) {
  QStringList words(QString{});
  for (const QChar letter : convert::toQt(text).normalized(QString::NormalizationForm_KD).toCaseFolded()) {
    if (letter.isMark()) continue;
    if (letter.isLetterOrNumber() || letter.isSurrogate()) {
      words.last() += plainLetter(letter);
    } else if (!words.last().isEmpty()) {
      words << QString();
    }
  }
  if (words.last().isEmpty()) words.removeLast();
  return words;
}

bool bears(const JobEntry& entry, const QStringList& asked) {
  const QStringList words = wordsOf(entry.title + '\n' + entry.reference + '\n' + entry.client);
  return std::all_of(asked.begin(), asked.end(), [&](const QString& word) {
    return std::any_of(words.begin(), words.end(), [&](const QString& borne) { return borne.startsWith(word); });
  });
}

bool before(const JobEntry* a, const JobEntry* b) {
  if (a->due.empty() != b->due.empty()) return b->due.empty();
  return std::tie(a->due, b->changedUtc, a->id) < std::tie(b->due, a->changedUtc, b->id);
}

}  // namespace

std::vector<const JobEntry*> searched(const std::vector<JobEntry>& entries, std::string_view asked, Shelf shelf) {
  const QStringList words = wordsOf(asked);
  std::vector<const JobEntry*> found;
  for (const JobEntry& entry : entries) {
    if (shelf != Shelf::Both && entry.archived != (shelf == Shelf::PutAway)) continue;
    if (bears(entry, words)) found.push_back(&entry);
  }
  std::sort(found.begin(), found.end(), before);
  return found;
}

}  // namespace app::workbench
