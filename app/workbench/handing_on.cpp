// Apart from the rest of the exchange: what keeps a file from being handed on is said in words, and words take Qt.
#include <algorithm>

#include "app/convert/text.h"
#include "app/words/words.h"
#include "app/workbench/record_exchange.h"

namespace app::workbench {

using core::base::Message;
using core::base::Problem;
using core::base::Result;
using core::base::Severity;
using core::record::Event;
using core::record::StoredText;

Result<std::string, Message> handOn(const std::string& jobId, std::vector<Event> events,
                                    core::record::EventStore& store, std::optional<StoredText> ownText) {
  std::vector<StoredText> texts = textsOf(store, events);
  if (ownText) texts.insert(texts.begin(), *ownText);
  for (const std::string& hash : hashesOf(events)) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [&](const StoredText& text) { return text.hash == hash; });
    if (ownText && hash == ownText->hash) continue;
    const auto whole = storedText(store, hash, found == texts.end() ? hash : found->name);
    if (!whole) return whole.error();
  }
  std::string text = core::record::writeRecord({jobId, std::move(texts), std::move(events)});
  if (text.size() > core::record::kMaximumRecordBytes) {
    return Message("export.too-large")
        .with("most", static_cast<std::int64_t>(core::record::kMaximumRecordBytes / (1024U * 1024U)));
  }
  // Read as whoever takes it up will read it.
  for (const Problem& problem : core::record::readRecord(text).problems.sorted()) {
    if (problem.severity != Severity::Error) continue;
    const QString detail = words::text(problem.message, core::units::UnitSystem::Millimetres);
    return Message("export.not-taken-up").with("detail", convert::fromQt(detail));
  }
  return text;
}

}  // namespace app::workbench
