#include "tests/app/glance/questions.h"

#include <algorithm>
#include <cmath>

#include "tests/app/measure/shown.h"

namespace tests {
namespace {

using app::viewmodels::BenchViewModel;
using app::viewmodels::ShelfModel;

// Minutes of arc: words, the act at arm's length, the figure.
constexpr double kWords = 16;
constexpr double kAct = 22;
constexpr double kFigure = 45;
// A fraction alone has two rows, for which there is less height from afar.
constexpr double kFraction = 0.8;
constexpr double kFarFraction = 0.6;
// A drawing that answers is as high as that at the least, mm.
constexpr double kLeastDrawing = 2;

// By question: how large its answer is at the least at arm's length and from afar, and the names of the items that may
// give it. This is the one place to change where a screen is drawn anew.
struct Answers {
  Question question;
  const char* words;
  double atBench, fromAfar;
  std::vector<const char*> names;
  std::vector<const char*> drawings;
};

const std::vector<Answers>& answers() {
  static const std::vector<Answers> kAll = {
      {Question::Now, "what now", kAct, kWords, {"title", "word"}, {}},
      {Question::Number, "which number", kFigure, kFigure, {"figure", "count", "ofCutter", "across", "down"}, {}},
      {Question::Edge, "from which edge", kWords, kWords, {"where", "from", "label"}, {}},
      {Question::SideUp, "which side is up", kWords, kWords, {"side"}, {}},
      {Question::HowMany, "how many", kWords, kWords, {"count"}, {}},
      {Question::Runs, "what runs", kWords, kWords, {"artwork", "rest", "next"}, {}},
      {Question::When, "when does it need me", kWords, kWords, {"brief", "next", "now", "times", "gone"}, {}},
      {Question::DoneLast, "what was done last", kWords, kWords, {"above"}, {}},
      {Question::Stage, "which stage", kWords, kWords, {"stages"}, {"stageStrip"}},
      {Question::Wet, "what is wet", kWords, kWords, {"artwork", "rest", "next"}, {}},
  };
  return kAll;
}

const Answers& answersTo(Question question) {
  return *std::find_if(answers().begin(), answers().end(),
                       [question](const Answers& one) { return one.question == question; });
}

bool readFromAfar(Glance glance) { return glance == Glance::FromAfar || glance == Glance::OnAlert; }

QStringList named(const QStringList& words) {
  QStringList present = words;
  present.removeAll(QString());
  return present;
}

QString plain(const QString& text) { return text.simplified().toCaseFolded(); }

bool isCalled(const QQuickItem* item, const std::vector<const char*>& names) {
  for (const QQuickItem* at = item; at != nullptr; at = at->parentItem()) {
    if (std::any_of(names.begin(), names.end(),
                    [&](const char* name) { return at->objectName() == QLatin1String(name); }))
      return true;
  }
  return false;
}

// All texts of items called so, in the order in which they are painted.
std::vector<ShownText> textsCalled(const std::vector<ShownText>& texts, const std::vector<const char*>& names) {
  std::vector<ShownText> found;
  for (const ShownText& text : texts) {
    if (text.item != nullptr && isCalled(text.item, names)) found.push_back(text);
  }
  return found;
}

// Of these texts those in which something of the answer is read; none where it is not read whole.
std::vector<ShownText> reading(const std::vector<ShownText>& texts, const Asked& asked) {
  std::vector<ShownText> read;
  const auto find = [&](const QString& words) {
    const QString wanted = plain(words);
    // A numerator is its own text, and not a digit of the whole.
    const auto is = [&](const ShownText& text) { return plain(text.text) == wanted; };
    const auto has = [&](const ShownText& text) { return plain(text.text).contains(wanted); };
    auto found = std::find_if(texts.begin(), texts.end(), is);
    if (found == texts.end()) found = std::find_if(texts.begin(), texts.end(), has);
    if (found != texts.end()) {
      read.push_back(*found);
      return true;
    }
    // It may stand in several texts side by side, as a number whose tenths are smaller.
    for (auto first = texts.begin(); first != texts.end(); ++first) {
      QString joined;
      auto last = first;
      while (last != texts.end() && joined.size() < wanted.size()) joined += plain((last++)->text);
      if (joined != wanted) continue;
      read.insert(read.end(), first, last);
      return true;
    }
    return false;
  };
  if (!std::all_of(asked.all.begin(), asked.all.end(), find)) return {};
  if (!asked.any.isEmpty() && !std::any_of(asked.any.begin(), asked.any.end(), find)) return {};
  return read;
}

QQuickItem* drawingCalled(QQuickItem* root, const std::vector<const char*>& names) {
  if (!root->isVisible() || root->opacity() == 0) return nullptr;
  if (std::any_of(names.begin(), names.end(),
                  [&](const char* name) { return root->objectName() == QLatin1String(name); }))
    return root;
  for (QQuickItem* child : root->childItems()) {
    if (QQuickItem* found = drawingCalled(child, names)) return found;
  }
  return nullptr;
}

// What an answer lies in, and the item that is made clear to see whether it is missed.
struct Seen {
  QQuickItem* item = nullptr;
  QRectF place;
};

struct Answer {
  std::vector<Seen> seen;
  std::string why;  // not why it answers, but why it does not
};

Answer answerOf(QQuickWindow& window, const Shown& shown, const Asked& asked, Glance glance, double dotsPerMm) {
  const Answers& known = answersTo(asked.question);
  const QRectF inside = QRectF(QPointF(), QSizeF(window.size())).adjusted(-1, -1, 1, 1);
  Answer answer;
  const std::vector<ShownText> read = reading(textsCalled(shown.texts, known.names), asked);
  if (read.empty()) {
    QQuickItem* drawing = known.drawings.empty() ? nullptr : drawingCalled(window.contentItem(), known.drawings);
    if (drawing == nullptr) {
      answer.why = "no item says \"" + (asked.all + asked.any).join(QStringLiteral(", ")).toStdString() + '"';
      return answer;
    }
    const QRectF place = drawing->mapRectToScene(QRectF(0, 0, drawing->width(), drawing->height()));
    if (!inside.contains(place)) answer.why = "its drawing is not in the window";
    if (place.height() < kLeastDrawing * dotsPerMm) answer.why = "its drawing is too small";
    answer.seen.push_back({drawing, place});
    return answer;
  }
  double largest = 0;
  for (const ShownText& text : read) {
    const double minutes = minutesOfArc(text.capPixels / dotsPerMm, text.awayMm);
    largest = std::max(largest, minutes);
    if (minutes < kWords) answer.why = '"' + text.text.toStdString() + "\" is too small";
    if (!text.fits) answer.why = '"' + text.text.toStdString() + "\" is cut";
    if (!inside.contains(text.place)) answer.why = '"' + text.text.toStdString() + "\" is not in the window";
    answer.seen.push_back({text.item, text.place});
  }
  const double least = asked.share * (readFromAfar(glance) ? known.fromAfar : known.atBench);
  if (largest < least) answer.why = "its answer is too small: " + std::to_string(largest) + "'";
  return answer;
}

// Whether two pictures differ in every quarter of the place, from left to right.
bool isMissed(const QImage& with, const QImage& without, const QRectF& place) {
  constexpr int kParts = 4;
  const QRect whole = place.toAlignedRect().intersected(with.rect());
  for (int part = 0; part < kParts; ++part) {
    const int from = whole.left() + whole.width() * part / kParts;
    const int to = whole.left() + whole.width() * (part + 1) / kParts;
    bool differs = false;
    for (int y = whole.top(); y <= whole.bottom() && !differs; ++y) {
      for (int x = from; x < to && !differs; ++x) differs = with.pixel(x, y) != without.pixel(x, y);
    }
    if (!differs) return false;
  }
  return true;
}

}  // namespace

const char* wordsOf(Question question) { return answersTo(question).words; }

std::vector<Asked> askedIn(app::viewmodels::Desk& desk, Glance glance) {
  const BenchViewModel& bench = desk.bench();
  std::vector<Asked> asked;
  const auto ask = [&](Question question, const QStringList& all, const QStringList& any = {}) {
    asked.push_back({question, named(all), named(any), 1});
  };
  // An alert speaks of one wait and takes the place of the act.
  if (glance == Glance::OnAlert) {
    const auto& alert = desk.alert();
    const QStringList parts = alert.piece().split(QStringLiteral(" · "));
    ask(Question::Now, {alert.act()});
    // Of a long name its first word is enough.
    const QString called = parts.front().section(QLatin1Char(' '), 0, 0);
    ask(Question::Runs, {}, {parts.front(), called});
    ask(Question::When, {alert.gone().isEmpty() ? alert.now() : alert.gone()});
    ask(Question::Wet, {}, parts + QStringList{called});
    return asked;
  }
  ask(Question::Now, {bench.title()});
  const bool worked = bench.kind() == BenchViewModel::Kind::Step;
  const auto* figure = desk.bench().figure();
  if (worked && figure->present()) {
    ask(Question::Number, {figure->whole(), figure->numerator(), figure->denominator(), figure->unit()});
    if (figure->whole().isEmpty()) asked.back().share = readFromAfar(glance) ? kFarFraction : kFraction;
    // All that a cutter is set to stands in one list, and none of it larger than the rest.
    for (const QVariant& one : figure->settings()) {
      const QVariantMap setting = one.toMap();
      if (setting[QStringLiteral("now")].toBool() && setting[QStringLiteral("ofCutter")].toBool())
        asked.back().share = kWords / kFigure;
    }
    // Of "from the marked edge, now on your right" the edge is enough.
    if (!figure->datum().isEmpty())
      ask(Question::Edge, {}, {figure->datum(), figure->datum().section(QLatin1Char(','), 0, 0)});
    if (!figure->count().isEmpty()) ask(Question::HowMany, {figure->count()});
  }
  if (worked && !bench.side().isEmpty()) ask(Question::SideUp, {bench.side()});
  const ShelfModel& shelf = desk.shelf();
  if (shelf.count() > 0) {
    const auto first = [&](int role) { return shelf.data(shelf.index(0), role); };
    const QStringList rests = first(ShelfModel::Rests).toStringList();
    const QString piece = first(ShelfModel::Piece).toString();
    if (piece.isEmpty()) {
      ask(Question::Runs, {}, rests);
    } else {
      ask(Question::Runs, {piece});
    }
    ask(Question::When, {first(ShelfModel::Brief).toString()});
    ask(Question::Wet, {}, QStringList{piece} + rests);
  }
  // From two metres, and on the page of an act, the maker asks for the act and for what calls.
  if (glance != Glance::AtBench) return asked;
  // What keeps an alert from being heard stands before what was done.
  if (!bench.above().isEmpty() && desk.watch().troubles().isEmpty()) {
    // Of a long one its first words and its time are enough.
    const QStringList words = bench.above().split(QLatin1Char(' '));
    ask(Question::DoneLast,
        {words.mid(0, 2).join(QLatin1Char(' ')), words.back().contains(QLatin1Char(':')) ? words.back() : QString()});
  }
  if (bench.stages().size() > 1) ask(Question::Stage, {});
  return asked;
}

std::vector<QQuickItem*> answering(QQuickWindow& window, const Asked& asked, Glance glance) {
  // However small or wherever: who answers is asked, not how well.
  const Shown shown = look(window.contentItem(), QImage());
  std::vector<QQuickItem*> items;
  for (const Seen& seen : answerOf(window, shown, asked, glance, 1).seen) items.push_back(seen.item);
  return items;
}

std::vector<Open> openIn(QQuickWindow& window, const std::vector<Asked>& asked, Glance glance, double dotsPerMm) {
  const QImage picture = window.grabWindow();
  const Shown shown = look(window.contentItem(), picture);
  std::vector<Answer> found;
  for (const Asked& one : asked) found.push_back(answerOf(window, shown, one, glance, dotsPerMm));
  std::vector<std::pair<QQuickItem*, double>> cleared;
  for (const Answer& answer : found) {
    for (const Seen& seen : answer.seen) {
      // One item may answer several questions.
      if (seen.item->opacity() == 0) continue;
      cleared.emplace_back(seen.item, seen.item->opacity());
      seen.item->setOpacity(0);
    }
  }
  const QImage without = window.grabWindow();
  for (const auto& [item, opacity] : cleared) item->setOpacity(opacity);
  std::vector<Open> open;
  for (std::size_t i = 0; i < asked.size(); ++i) {
    std::string why = found[i].why;
    for (const Seen& seen : found[i].seen) {
      if (why.empty() && !isMissed(picture, without, seen.place)) why = "its answer is covered";
    }
    if (!why.empty()) open.push_back({asked[i].question, why});
  }
  return open;
}

}  // namespace tests
