#include "app/viewmodels/desk/piece_outlook.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "app/viewmodels/names.h"
#include "app/viewmodels/times.h"
#include "app/viewmodels/told_wait.h"
#include "core/base/text.h"
#include "core/jobs/agenda.h"
#include "core/supply/shortage.h"
#include "core/units/length_display.h"
#include "core/units/length_entry.h"
#include "core/workflow/rehearse.h"

namespace app::viewmodels {

using convert::toQt;
using core::materials::AmountKind;
using core::materials::CutPiece;
using core::materials::ShortFrom;
using core::materials::ShortLine;
using core::units::Duration;
using core::units::Rounding;
using core::units::UnitSystem;

namespace {

constexpr double kMillisecondsOfMinute = 60'000;

class Outlook {
  Q_DECLARE_TR_FUNCTIONS(outlook)
};

// Up to the full hour where it is another day: nobody plans a day to the minute.
std::int64_t readyAt(std::int64_t utc, std::int64_t now, const std::string& zone) {
  constexpr std::int64_t kHour = 3'600'000;
  if (!isOtherDay(utc, now, zone)) return rounded(utc, now, Expected::Opening);
  return (utc + kHour - 1) / kHour * kHour;
}

// What is lacking, put together by what it is of.
class Wants {
 public:
  explicit Wants(UnitSystem units) : m_units(units) {}

  void lacks(const CutPiece& piece, double count, const QString& why) {
    add(Outlook::tr("To buy"), materialOf(piece), saidOf(piece, count), why);
  }
  void lacks(const QString& what, const QString& amount) {
    m_rows.push_back({what, top(Outlook::tr("To buy")), amount, {}, {}});
  }
  void unknown(const CutPiece& piece, double count) {
    add(Outlook::tr("Needed; none is entered in stock"), materialOf(piece), saidOf(piece, count), {});
  }
  void unknown(const QString& what, const QString& amount) {
    m_rows.push_back({what, top(Outlook::tr("Needed; none is entered in stock")), amount, {}, {}});
  }
  void cutToSize(const CutPiece& piece) {
    m_rows.push_back({capitalised(words::pieceName(piece)),
                      top(Outlook::tr("Bought cut to size")),
                      piece.count == 1 ? QString() : QString::number(piece.count),
                      sizeOf(piece),
                      {}});
  }
  std::vector<RowsModel::Row> rows() && { return std::move(m_rows); }

 private:
  // Said once, above the first of its kind.
  QString top(const QString& heading) {
    if (heading == m_heading) return {};
    m_heading = heading;
    return heading;
  }
  void add(const QString& heading, const QString& what, const QString& note, const QString& why) {
    const QString above = top(heading);
    if (!above.isEmpty()) m_first = m_rows.size();
    // What is cut from the same is one row.
    const auto same = std::find_if(m_rows.begin() + static_cast<std::ptrdiff_t>(m_first), m_rows.end(),
                                   [&](const RowsModel::Row& row) { return row.title == what && row.problem == why; });
    if (same == m_rows.end()) {
      m_rows.push_back({what, above, {}, note, why});
    } else {
      same->note += QLatin1Char('\n') + note;
    }
  }
  QString sizeOf(const CutPiece& piece) const {
    const auto shown = [&](core::units::Length length) {
      // A number and its unit stay in one line.
      return toQt(core::units::lengthText(length.inMillimetres(), m_units, Rounding::Nearest))
          .replace(QLatin1Char(' '), QChar::Nbsp);
    };
    return Outlook::tr("%1 × %2").arg(shown(piece.neededWidth()), shown(piece.height));
  }
  QString saidOf(const CutPiece& piece, double count) const {
    const QString one = Outlook::tr("%1, %2").arg(words::pieceName(piece), sizeOf(piece));
    return count == 1 ? one : Outlook::tr("%1 × %2").arg(toQt(core::base::fixedNumber(count, 0)), one);
  }
  QString materialOf(const CutPiece& piece) const {
    const QString name = !piece.material.empty() ? toQt(piece.material)
                         : piece.ofPaper()       ? Outlook::tr("paper")
                                                 : Outlook::tr("board");
    if (!piece.thickness) return capitalised(name);
    return Outlook::tr("%1, %2").arg(capitalised(name),
                                     toQt(core::units::enteredText(*piece.thickness, m_units, Rounding::Nearest)));
  }

  UnitSystem m_units;
  QString m_heading;
  std::size_t m_first = 0;  // of the rows under the present heading
  std::vector<RowsModel::Row> m_rows;
};

QString nameOf(const core::materials::Amount& amount) {
  switch (amount.kind) {
    case AmountKind::Leaf: return Outlook::tr("Leaf for %1").arg(toQt(amount.of));
    case AmountKind::Size: return Outlook::tr("Adhesive size for %1").arg(toQt(amount.of));
    case AmountKind::Paste: return Outlook::tr("Paste");
    case AmountKind::Paint: return Outlook::tr("Paint, %1").arg(toQt(amount.of));
  }
  return {};
}

// Up to what can be bought: whole leaves, whole millilitres.
QString amountText(AmountKind kind, double amount) {
  const QString number = toQt(core::base::fixedNumber(std::ceil(amount), 0));
  return kind == AmountKind::Leaf ? number : Outlook::tr("%1 ml").arg(number);
}

QString whyOf(const ShortLine& line) {
  if (line.from == ShortFrom::Nothing) return Outlook::tr("none in stock serves");
  for (const auto& note : line.notes) {
    if (note.id == "shortage.too-large") return Outlook::tr("no sheet in stock is large enough");
  }
  return {};
}

}  // namespace

PieceOutlook outlookOf(const core::jobs::JobAt& job, const std::string& zone) {
  PieceOutlook outlook;
  const core::workflow::Agenda agenda = core::jobs::agendaOf(job);
  if (agenda.steps().empty()) return outlook;
  const core::workflow::Rehearsal rehearsal = core::workflow::rehearse(agenda, job.way());
  const std::int64_t now = job.now().utcMilliseconds;
  const auto instant = [&](double minutes) { return now + std::llround(minutes * kMillisecondsOfMinute); };
  outlook.ready = Outlook::tr("Ready about %1, nights worked through.")
                      .arg(clockTime(readyAt(instant(rehearsal.minutes), now, zone), now, zone, Day::Long));
  outlook.hands = Outlook::tr("%1 by hand")
                      .arg(roughly(Duration::milliseconds(std::llround(rehearsal.hands * kMillisecondsOfMinute))));
  for (const auto& worked : rehearsal.acts) {
    if (isOtherDay(instant(worked.at), now, zone)) break;
    RowsModel::Row row;
    row.title = actName(job.state().plan->workflow, job.way(), worked.steps);
    row.value = clockTime(rounded(instant(worked.at), now, Expected::Opening), now, zone);
    outlook.today.push_back(std::move(row));
  }
  return outlook;
}

std::vector<RowsModel::Row> waitsOf(const core::jobs::JobAt& job, const std::string& zone) {
  std::vector<RowsModel::Row> rows;
  for (const auto& test : core::jobs::touchTests(job)) {
    const core::jobs::RunningWait& run = job.state().waits.at(test.wait);
    const ToldWait told = toldWait(job, run, zone);
    RowsModel::Row row;
    row.title = waitName(run);
    row.value = told.brief;
    row.note = told.sentence;
    row.act = told.isWindow;
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<RowsModel::Row> wantsOf(const std::string& job, const core::design::Design& design,
                                    const core::shop::Shop& shop) {
  const auto pieces = core::materials::cuttingList(design.job, design.layout);
  const auto amounts = core::materials::amountsOf(design.job, design.layout);
  const auto shortage = core::supply::shortageOf(job, design, shop);
  Wants wants(design.job.units);
  // What lacks for certain comes first.
  for (const bool known : {true, false}) {
    for (const ShortLine& line : shortage.lines) {
      const bool lacks = line.lack && *line.lack > 0;
      if (known ? !lacks : line.from != ShortFrom::Unlisted) continue;
      const double count = known ? *line.lack : line.need;
      if (const auto piece =
              std::find_if(pieces.begin(), pieces.end(), [&](const auto& one) { return one.id == line.id; });
          line.piece && piece != pieces.end()) {
        known ? wants.lacks(*piece, count, whyOf(line)) : wants.unknown(*piece, count);
      }
      if (const auto amount =
              std::find_if(amounts.begin(), amounts.end(), [&](const auto& one) { return one.id == line.id; });
          !line.piece && amount != amounts.end()) {
        const QString text = amountText(amount->kind, count);
        known ? wants.lacks(nameOf(*amount), text) : wants.unknown(nameOf(*amount), text);
      }
    }
  }
  for (const CutPiece& piece : pieces) {
    if (core::materials::isBought(piece.use)) wants.cutToSize(piece);
  }
  return std::move(wants).rows();
}

}  // namespace app::viewmodels
