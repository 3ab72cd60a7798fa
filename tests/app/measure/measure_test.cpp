// Every screen and state on every size of tablet and in both lights, measured as a maker meets it.
#if __has_include(<catch2/catch_session.hpp>)
#include <catch2/catch_session.hpp>
#else
#define CATCH_CONFIG_RUNNER
#endif
#include "tests/support/catch.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QRegularExpression>
#include <algorithm>
#include <functional>
#include <set>

#include "app/face/face.h"
#include "app/face/letters.h"
#include "tests/app/gallery/settled.h"
#include "tests/app/gallery/specimen_sheet.h"
#include "tests/app/gallery/states.h"
#include "tests/app/measure/shown.h"

namespace {

constexpr double kTabletWidth = 217;   // mm, of its longer side
constexpr double kHairsbreadth = 0.1;  // mm: half a pixel of the coarser tablet

struct Visit {
  const tests::State* state;
  QSize size;
  bool lamp;
  double dotsPerMm;
  bool small;  // of seven inches
  tests::Shown shown;
  std::vector<tests::OfferedAction> offered;
  QString title;
  QString whole;  // of the figure being worked, "" where none is
};

// All of them are looked at once; the tests below each ask one thing of every one.
const std::vector<Visit>& allVisits() {
  static const std::vector<Visit> all = [] {
    std::vector<Visit> made;
    for (const tests::State& state : tests::states()) {
      INFO(state.name);
      tests::Stage stage(state.jobs);
      REQUIRE(state.reach(stage));
      while (state.screen != "alert" && stage.desk().alert().up()) stage.desk().alert().hear();
      for (const tests::Tablet& tablet : tests::tablets()) {
        if (!tests::isShownOn(state, tablet)) continue;
        app::face::Face face;
        REQUIRE(face.load(stage.desk(), tablet.dotsPerMm()));
        face.window()->resize(tablet.size);
        if (state.screen != "alert") face.open(QString::fromStdString(state.screen));
        face.window()->show();
        const auto* figure = stage.desk().bench().figure();
        for (const bool lamp : {false, true}) {
          // How it is laid out does not hang on the light.
          if (lamp && (tablet.upright() || tablet.isSmall())) continue;
          face.window()->setProperty("lamp", lamp);
          const QImage picture = tests::settledPicture(*face.window());
          made.push_back({&state, tablet.size, lamp, tablet.dotsPerMm(), tablet.isSmall(),
                          tests::look(face.window()->contentItem(), picture), tests::offeredBy(*face.window()),
                          stage.desk().bench().title(), figure->present() ? figure->whole() : QString()});
        }
      }
    }
    return made;
  }();
  return all;
}

// On a tablet on which there is room for all that a screen says. A small one is held to its corners.
const std::vector<Visit>& visits() {
  static const std::vector<Visit> roomy = [] {
    std::vector<Visit> kept;
    std::copy_if(allVisits().begin(), allVisits().end(), std::back_inserter(kept),
                 [](const Visit& visit) { return !visit.small; });
    return kept;
  }();
  return roomy;
}

std::string about(const Visit& visit) {
  return visit.state->name + ' ' + std::to_string(visit.size.width()) + 'x' + std::to_string(visit.size.height()) +
         (visit.lamp ? " lamp" : " day");
}

double gapBetween(const QRectF& a, const QRectF& b) {
  const double across = std::max(a.left() - b.right(), b.left() - a.right());
  const double down = std::max(a.top() - b.bottom(), b.top() - a.bottom());
  return std::max(across, down);
}

// Screens for clean hands, away from the bench.
bool isAtDesk(const Visit& visit) {
  const std::string& screen = visit.state->screen;
  return screen == "design" || screen == "pieces" || screen == "piece" || screen == "settings" || screen == "stock" ||
         screen == "record" || screen == "renewal" || screen == "appearance";
}

bool isCorner(const tests::ShownKey& key) {
  return key.name == QLatin1String("back") || key.name == QLatin1String("done") || key.name == QLatin1String("heard");
}

// Rows of a schedule are told apart by their edges and may touch.
bool isOfSchedule(const tests::ShownKey& key) {
  return key.name.startsWith(QLatin1String("section")) || key.name == QLatin1String("theRest");
}

}  // namespace

TEST_CASE("keys are large enough for a knuckle and stand apart", "[measure]") {
  for (const Visit& visit : visits()) {
    const auto& keys = visit.shown.keys;
    for (std::size_t i = 0; i < keys.size(); ++i) {
      INFO(about(visit) << ' ' << keys[i].legend.toStdString() << ' ' << keys[i].name.toStdString());
      // A clean finger meets 9 mm; apart from their neighbours by as much as a list can spare.
      const bool desk = isAtDesk(visit);
      const double least = desk ? 9 : isCorner(keys[i]) ? 30 : 20;
      const double apart = desk ? 1.4 : 6;
      CHECK(keys[i].place.width() / visit.dotsPerMm >= least - kHairsbreadth);
      CHECK(keys[i].place.height() / visit.dotsPerMm >= least - kHairsbreadth);
      for (std::size_t j = i + 1; j < keys.size(); ++j) {
        INFO("and " << keys[j].legend.toStdString() << ' ' << keys[j].name.toStdString());
        const double gap = isOfSchedule(keys[i]) && isOfSchedule(keys[j]) ? 0 : apart;
        CHECK(gapBetween(keys[i].place, keys[j].place) / visit.dotsPerMm >= gap - kHairsbreadth);
      }
    }
  }
}

TEST_CASE("no screen has more than six targets, a number pad's own twelve apart", "[measure]") {
  constexpr std::size_t kPad = 12;
  for (const Visit& visit : visits()) {
    INFO(about(visit));
    if (isAtDesk(visit)) continue;
    const auto& keys = visit.shown.keys;
    const bool pad = std::any_of(keys.begin(), keys.end(),
                                 [](const tests::ShownKey& key) { return key.name == QLatin1String("digit0"); });
    CHECK(visit.shown.keys.size() <= 6 + (pad ? kPad : 0));
  }
}

TEST_CASE("every key is of an action that its screen offers, and every action offered at a place has its key there",
          "[measure]") {
  // As ScreenAction counts them.
  constexpr int kContent = 0;
  constexpr int kNoKey = 5;
  std::set<QString> met;
  for (const Visit& visit : visits()) {
    std::set<QString> offered;
    std::set<QString> shown;
    for (const tests::ShownKey& key : visit.shown.keys) shown.insert(key.name);
    for (const tests::OfferedAction& action : visit.offered) {
      INFO(about(visit) << ' ' << action.name.toStdString());
      if (!action.enabled) continue;
      CHECK_FALSE(action.called.isEmpty());
      CHECK(offered.insert(action.name).second);
      // What stands in a list may have been scrolled out of sight.
      if (action.place != kContent && action.place != kNoKey) CHECK(shown.count(action.name) == 1);
      if (action.place == kNoKey) CHECK(shown.count(action.name) == 0);
    }
    for (const tests::ShownKey& key : visit.shown.keys) {
      INFO(about(visit) << ' ' << key.name.toStdString());
      CHECK((!key.enabled || offered.count(key.name) == 1));
    }
    met.insert(offered.begin(), offered.end());
  }
  CHECK(met.size() > 60);
}

TEST_CASE("Back and Done never move", "[measure]") {
  std::size_t corners = 0;
  for (const Visit& visit : visits()) {
    for (const tests::ShownKey& key : visit.shown.keys) {
      INFO(about(visit) << ' ' << key.name.toStdString());
      const double edge = 2 * visit.dotsPerMm + 1.5;
      if (key.name == QLatin1String("back")) CHECK(key.place.left() <= edge);
      if (key.name == QLatin1String("done")) CHECK(visit.size.width() - key.place.right() <= edge);
      if (key.name == QLatin1String("back") || key.name == QLatin1String("done")) {
        CHECK(visit.size.height() - key.place.bottom() <= edge);
        ++corners;
      }
    }
  }
  CHECK(corners > visits().size());
}

TEST_CASE("on an alert nothing can be pressed where Back and Done stand elsewhere", "[measure]") {
  std::size_t keys = 0;
  for (const Visit& visit : visits()) {
    if (visit.state->screen != "alert") continue;
    const double corner = 32 * visit.dotsPerMm;
    const QSizeF size(visit.size);
    const QRectF back(0, size.height() - corner, corner, corner);
    const QRectF done(size.width() - corner, size.height() - corner, corner, corner);
    for (const tests::ShownKey& key : visit.shown.keys) {
      INFO(about(visit) << ' ' << key.name.toStdString());
      CHECK_FALSE(key.place.intersects(back));
      CHECK_FALSE(key.place.intersects(done));
      ++keys;
    }
  }
  CHECK(keys > 20);
}

// What is wrong with Back and Done where a screen has them: each whole in its corner, at its full size, nothing on it.
std::vector<std::string> wrongCorners(const Visit& visit) {
  std::vector<std::string> wrong;
  const QRectF window(QPointF(0, 0), QSizeF(visit.size));
  // In the list of jobs nothing stands where Done does elsewhere.
  std::set<QString> wanted = {QStringLiteral("back"), QStringLiteral("done")};
  if (visit.state->screen == "jobs") wanted.erase(QStringLiteral("done"));
  for (const tests::ShownKey& key : visit.shown.keys) {
    if (key.name != QLatin1String("back") && key.name != QLatin1String("done")) continue;
    const std::string name = key.name.toStdString();
    if (wanted.erase(key.name) == 0) wrong.push_back(name + " is there twice, or where it should not be");
    if (!window.contains(key.place)) wrong.push_back(name + " is not whole");
    const double least = (30 - kHairsbreadth) * visit.dotsPerMm;
    if (key.place.width() < least || key.place.height() < least) wrong.push_back(name + " is too small");
    const double edge = 2 * visit.dotsPerMm + 1.5;
    const double aside = key.name == QLatin1String("back") ? key.place.left() : window.right() - key.place.right();
    if (aside > edge || window.bottom() - key.place.bottom() > edge) wrong.push_back(name + " is not in its corner");
    for (const tests::ShownKey& other : visit.shown.keys) {
      if (other.name != key.name && other.place.intersects(key.place))
        wrong.push_back(other.name.toStdString() + " lies on " + name);
    }
  }
  for (const QString& name : wanted) wrong.push_back(name.toStdString() + " is not there");
  return wrong;
}

bool hasCorners(const Visit& visit) {
  const std::string& screen = visit.state->screen;
  return tests::isOfBench(*visit.state) && screen != "far" && screen != "alert";
}

TEST_CASE("every screen that has Back and Done shows both whole, on a tablet that lies, that stands and that is small",
          "[measure]") {
  std::size_t upright = 0;
  std::size_t small = 0;
  for (const Visit& visit : allVisits()) {
    if (!hasCorners(visit)) continue;
    for (const std::string& wrong : wrongCorners(visit)) FAIL_CHECK(about(visit) << ": " << wrong);
    upright += visit.size.height() > visit.size.width() ? 1 : 0;
    small += visit.small ? 1 : 0;
  }
  CHECK(upright > 30);
  CHECK(small > 30);
}

TEST_CASE("a corner key that is gone, moved, cut, small or covered is told of", "[measure]") {
  const auto found = std::find_if(allVisits().begin(), allVisits().end(),
                                  [](const Visit& visit) { return visit.small && hasCorners(visit); });
  REQUIRE(found != allVisits().end());
  REQUIRE(wrongCorners(*found).empty());
  for (const char* name : {"back", "done"}) {
    const auto changed = [&](const std::function<void(std::vector<tests::ShownKey>&, tests::ShownKey&)>& change) {
      Visit visit = *found;
      auto& keys = visit.shown.keys;
      const auto key = std::find_if(keys.begin(), keys.end(),
                                    [name](const tests::ShownKey& one) { return one.name == QLatin1String(name); });
      REQUIRE(key != keys.end());
      change(keys, *key);
      return wrongCorners(visit);
    };
    const double finger = 10 * found->dotsPerMm;
    using Keys = std::vector<tests::ShownKey>;
    INFO(name);
    const auto tells = [&](const std::vector<std::string>& wrong, const std::string& what) {
      return std::count(wrong.begin(), wrong.end(), what) == 1;
    };
    const std::string corner = name;
    CHECK(tells(changed([](Keys&, auto& key) { key.name = QStringLiteral("other"); }), corner + " is not there"));
    CHECK(tells(changed([&](Keys&, auto& key) { key.place.translate(0, -finger); }), corner + " is not in its corner"));
    CHECK(tells(changed([&](Keys&, auto& key) { key.place.translate(0, finger); }), corner + " is not whole"));
    CHECK(tells(changed([&](Keys&, auto& key) { key.place.setTop(key.place.top() + finger); }),
                corner + " is too small"));
    const auto covered = changed([&](Keys& keys, auto& key) {
      const QRectF place = key.place.translated(finger, -finger);
      keys.push_back({{}, QStringLiteral("another"), place, true});
    });
    CHECK(tells(covered, "another lies on " + corner));
  }
}

TEST_CASE("no text is under sixteen minutes of arc, and the act not under twenty-two", "[measure]") {
  int titles = 0;
  for (const Visit& visit : visits()) {
    for (const tests::ShownText& text : visit.shown.texts) {
      INFO(about(visit) << " \"" << text.text.toStdString() << "\" " << text.pixelSize << " px");
      const double minutes = tests::minutesOfArc(text.capPixels / visit.dotsPerMm, text.awayMm);
      CHECK(minutes >= 16);
      if (text.text == visit.title && visit.state->screen == "bench") {
        ++titles;
        CHECK(minutes >= 22);
      }
    }
  }
  CHECK(titles > 20);
}

TEST_CASE("every letter is drawn from the program's own faces, whatever else is installed", "[measure]") {
  const QString letters = QString::fromLatin1(app::face::kLetters);
  const QString behind = QString::fromLatin1(app::face::kLettersBehind);
  const QString artwork = QString::fromLatin1(app::face::kArtworkLetters);
  int artworks = 0;
  std::set<QString> plain;
  for (const Visit& visit : visits()) {
    for (const tests::ShownText& text : visit.shown.texts) {
      INFO(about(visit) << " \"" << text.text.toStdString() << "\" in " << text.families.join(", ").toStdString());
      REQUIRE_FALSE(text.families.isEmpty());
      const bool ofArtwork = text.families.contains(artwork);
      for (const QString& family : text.families) CHECK((family == letters || family == behind || family == artwork));
      // Behind it stands nothing but what it lacks: words and digits are never another's.
      if (text.text.contains(QRegularExpression(QStringLiteral("[0-9A-Za-z]"))))
        CHECK((ofArtwork || text.families.contains(letters)));
      artworks += ofArtwork ? 1 : 0;
      plain.insert(text.text);
    }
  }
  CHECK(plain.size() > 100);
  CHECK(artworks > 50);
}

TEST_CASE("letters have their own widths, figures one, and regular and bold take the same room", "[measure]") {
  REQUIRE_FALSE(visits().empty());
  const auto width = [](const char* text, bool bold) {
    QFont font(QString::fromLatin1(app::face::kLetters));
    font.setPixelSize(100);
    font.setBold(bold);
    return QFontMetricsF(font).horizontalAdvance(QString::fromLatin1(text));
  };
  for (const bool bold : {false, true}) {
    CHECK(width("iiii", bold) < width("mmmm", bold) / 2);
    for (const char* figure : {"1", "4", "7"}) CHECK(width(figure, bold) == width("0", bold));
  }
  // To the hinting.
  const double plain = width("the window of the top board", false);
  CHECK(std::abs(plain - width("the window of the top board", true)) < plain / 100);
}

TEST_CASE("the figure being worked subtends 45 minutes of arc as it is really drawn", "[measure]") {
  int figures = 0;
  for (const Visit& visit : visits()) {
    const std::string& screen = visit.state->screen;
    const bool shows = screen == "bench" || screen == "far";
    if (!shows || visit.whole.isEmpty()) continue;
    // On the card it stands at its place among the others as well, as large as a label.
    double largest = 0;
    for (const tests::ShownText& text : visit.shown.texts) {
      // Tenths may stand smaller beside it.
      if (text.text != visit.whole && text.text != visit.whole.section(QLatin1Char('.'), 0, 0)) continue;
      ++figures;
      const double height = tests::inkHeight(visit.shown.picture, text) / visit.dotsPerMm;
      // The ragged edge of a digit costs up to a pixel.
      largest = std::max(largest, tests::minutesOfArc(height + 1 / visit.dotsPerMm, text.awayMm));
    }
    INFO(about(visit) << ' ' << visit.whole.toStdString());
    if (largest > 0) CHECK(largest >= 45);
  }
  CHECK(figures > 20);
}

TEST_CASE("every text stands seven to one against its ground", "[measure]") {
  for (const Visit& visit : visits()) {
    for (const tests::ShownText& text : visit.shown.texts) {
      if (!text.active) continue;
      INFO(about(visit) << " \"" << text.text.toStdString() << '"');
      CHECK(tests::contrast(text.ink, tests::groundOf(visit.shown.picture, text.place)) >= 7);
    }
  }
}

TEST_CASE("nothing is cut off and nothing covers a key", "[measure]") {
  for (const Visit& visit : visits()) {
    const QRectF window(QPointF(0, 0), QSizeF(visit.size));
    INFO(about(visit));
    CHECK(visit.shown.panesFit);
    for (const tests::ShownKey& key : visit.shown.keys) {
      INFO(key.legend.toStdString());
      CHECK(window.contains(key.place));
    }
    for (const tests::ShownText& text : visit.shown.texts) {
      INFO('"' << text.text.toStdString() << '"');
      CHECK(text.fits);
      CHECK(window.adjusted(-1, -1, 1, 1).contains(text.place));
      for (const tests::ShownKey& key : visit.shown.keys) {
        INFO("key " << key.legend.toStdString());
        const QRectF both = key.place.intersected(text.place);
        if (text.inKey && both.width() > 0) {
          CHECK(key.place.adjusted(-1, -1, 1, 1).contains(text.place));
        } else {
          // A line's own leading may reach under a key; its letters may not.
          CHECK((both.width() <= 1 || both.height() <= text.pixelSize * 0.2));
        }
      }
    }
  }
}

TEST_CASE("no text lies on another", "[measure]") {
  for (const Visit& visit : visits()) {
    const auto& texts = visit.shown.texts;
    for (std::size_t i = 0; i < texts.size(); ++i) {
      for (std::size_t j = i + 1; j < texts.size(); ++j) {
        INFO(about(visit) << " \"" << texts[i].text.toStdString() << "\" and \"" << texts[j].text.toStdString() << '"');
        const QRectF both = texts[i].place.intersected(texts[j].place);
        const double leading = std::min(texts[i].pixelSize, texts[j].pixelSize) * 0.3;
        CHECK((both.width() <= 1 || both.height() <= leading));
      }
    }
  }
}

TEST_CASE("beside the drawing of its act the second page of every step has room for its words", "[measure]") {
  const QSize size(1280, 800);
  tests::Stage stage({"pilots-chart"});
  // The first strip speaks for the others.
  std::set<QString> seen;
  static_cast<void>(stage.workUntil([&] {
    const auto& bench = stage.desk().bench();
    if (bench.kind() != app::viewmodels::BenchViewModel::Kind::Step) return false;
    if (!seen.insert(bench.stepId().section(QLatin1Char('@'), 0, 0)).second) return false;
    while (stage.desk().alert().up()) stage.desk().alert().hear();
    INFO(bench.stepId().toStdString());
    // A face for each: one that followed the whole job would be painted at every minute of it.
    app::face::Face face;
    REQUIRE(face.load(stage.desk(), size.width() / kTabletWidth));
    face.window()->resize(size);
    face.open(QStringLiteral("more"));
    face.window()->show();
    tests::settledPicture(*face.window());
    const auto* act = face.window()->findChild<QQuickItem*>(QStringLiteral("act"));
    REQUIRE(act != nullptr);
    CHECK(act->isVisible());
    const QRectF place = act->mapRectToScene(QRectF(0, 0, act->width(), act->height()));
    const tests::Shown shown = tests::look(face.window()->contentItem(), QImage());
    qsizetype besides = 0;
    for (const tests::ShownText& text : shown.texts) {
      INFO('"' << text.text.toStdString() << '"');
      CHECK(text.fits);
      // The numbers of the sentences stand in the drawing.
      if (text.text.size() == 1 && place.contains(text.place)) continue;
      CHECK_FALSE(place.intersects(text.place.adjusted(1, 1, -1, -1)));
      besides += bench.sentences().contains(text.text) ? 1 : 0;
    }
    // How it is done stands beside the drawing; what an act has beyond a page is one turn away.
    CHECK(besides >= std::min<qsizetype>(3, bench.sentences().size()));
    return false;
  }));
  CHECK(seen.size() > 40);
}

TEST_CASE("what the screens are made of keeps sizes and contrasts on a sheet of its own", "[measure]") {
  for (const bool lamp : {false, true}) {
    tests::SpecimenSheet sheet(lamp);
    INFO((lamp ? "lamp " : "day ") << sheet.warnings().join("; ").toStdString());
    REQUIRE(sheet.window() != nullptr);
    const QImage picture = tests::settledPicture(*sheet.window());
    CHECK(sheet.warnings().isEmpty());
    const tests::Shown shown = tests::look(sheet.window()->contentItem(), picture);
    CHECK(shown.panesFit);
    CHECK(shown.keys.size() >= 10);
    CHECK(shown.texts.size() > 60);
    for (const tests::ShownText& text : shown.texts) {
      INFO('"' << text.text.toStdString() << '"');
      CHECK(tests::minutesOfArc(text.capPixels / tests::SpecimenSheet::kDotsPerMm, text.awayMm) >= 16);
      CHECK(tests::contrast(text.ink, tests::groundOf(picture, text.place)) >= 7);
      CHECK(text.fits);
    }
    for (std::size_t i = 0; i < shown.texts.size(); ++i) {
      for (std::size_t j = i + 1; j < shown.texts.size(); ++j) {
        const auto& one = shown.texts[i];
        const auto& other = shown.texts[j];
        INFO('"' << one.text.toStdString() << "\" and \"" << other.text.toStdString() << '"');
        const QRectF both = one.place.intersected(other.place);
        CHECK((both.width() <= 1 || both.height() <= std::min(one.pixelSize, other.pixelSize) * 0.3));
      }
    }
  }
}

int main(int argc, char* argv[]) {
  QGuiApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
