// Ten questions a maker asks of the bench in one glance: whatever its state, none that arises is left open.
#if __has_include(<catch2/catch_session.hpp>)
#include <catch2/catch_session.hpp>
#else
#define CATCH_CONFIG_RUNNER
#endif
#include "tests/support/catch.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <functional>
#include <optional>
#include <set>

#include "app/face/face.h"
#include "tests/app/gallery/settled.h"
#include "tests/app/gallery/states.h"
#include "tests/app/glance/questions.h"

namespace {

using tests::Asked;
using tests::Glance;
using tests::Question;

constexpr double kTabletWidth = 217;  // mm, of its longer side

std::optional<Glance> glanceAt(const tests::State& state) {
  if (state.screen == "bench") return Glance::AtBench;
  if (state.screen == "far") return Glance::FromAfar;
  if (state.screen == "alert") return Glance::OnAlert;
  return std::nullopt;
}

// A state in a window, as a maker meets it.
class Staged {
 public:
  Staged(const tests::State& state, const QSize& size)
      : m_stage(state.jobs), m_dotsPerMm(std::max(size.width(), size.height()) / kTabletWidth) {
    REQUIRE(state.reach(m_stage));
    while (state.screen != "alert" && m_stage.desk().alert().up()) m_stage.desk().alert().hear();
    REQUIRE(m_face.load(m_stage.desk(), m_dotsPerMm));
    m_face.window()->resize(size);
    if (state.screen != "alert") m_face.open(QString::fromStdString(state.screen));
    m_face.window()->show();
    tests::settledPicture(window());
    m_glance = *glanceAt(state);
    m_asked = tests::askedIn(m_stage.desk(), m_glance);
  }

  QQuickWindow& window() { return *m_face.window(); }
  Glance glance() const { return m_glance; }
  const std::vector<Asked>& asked() const { return m_asked; }
  std::vector<tests::Open> open() { return tests::openIn(window(), m_asked, m_glance, m_dotsPerMm); }
  bool leavesOpen(Question question) {
    const auto all = open();
    return std::any_of(all.begin(), all.end(), [&](const tests::Open& one) { return one.question == question; });
  }

 private:
  tests::Stage m_stage;
  double m_dotsPerMm;
  app::face::Face m_face;
  Glance m_glance = Glance::AtBench;
  std::vector<Asked> m_asked;
};

// Lays a sheet over the item, as a page or a key may come to lie over it.
std::unique_ptr<QQuickItem> coverFor(QQuickItem& item) {
  static QQmlEngine engine;
  QQmlComponent sheet(&engine);
  sheet.setData("import QtQuick; Rectangle { color: \"white\" }", QUrl());
  std::unique_ptr<QQuickItem> cover(qobject_cast<QQuickItem*>(sheet.create()));
  cover->setParentItem(item.window()->contentItem());
  const QRectF place = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
  // Half of it is enough to be in the way.
  cover->setPosition(place.topLeft() - QPointF(2, 2));
  cover->setSize(QSizeF(place.width() / 2 + 2, place.height() + 4));
  cover->setZ(1000);
  return cover;
}

}  // namespace

TEST_CASE("every state of the bench answers in one glance what a maker asks of it", "[glance]") {
  std::set<Question> met;
  int answered = 0;
  for (const tests::State& state : tests::states()) {
    if (!glanceAt(state)) continue;
    for (const QSize& size : {QSize(1280, 800), QSize(800, 1280)}) {
      Staged staged(state, size);
      for (const tests::Open& open : staged.open()) {
        FAIL_CHECK(state.name << ' ' << size.width() << 'x' << size.height() << " leaves open "
                              << tests::wordsOf(open.question) << ": " << open.why);
      }
      for (const Asked& one : staged.asked()) met.insert(one.question);
      answered += static_cast<int>(staged.asked().size());
    }
  }
  // Every question arises somewhere.
  CHECK(met.size() == tests::kQuestions);
  CHECK(answered > 300);
}

TEST_CASE("an answer that cannot be seen, read or found leaves its question open", "[glance]") {
  std::set<Question> tried;
  for (const tests::State& state : tests::states()) {
    if (!glanceAt(state) || tried.size() == tests::kQuestions) continue;
    Staged staged(state, {1280, 800});
    for (const Asked& asked : staged.asked()) {
      // Each is tried where it arises first; where it is left open the test above tells of it.
      if (tried.count(asked.question) > 0 || staged.leavesOpen(asked.question)) continue;
      INFO(state.name << ": " << tests::wordsOf(asked.question));
      // An answer given twice is given until neither is seen.
      const auto answering = [&] { return tests::answering(staged.window(), asked, staged.glance()); };
      std::vector<std::pair<QQuickItem*, double>> hidden;
      for (auto items = answering(); !items.empty(); items = answering()) {
        for (QQuickItem* item : items) {
          // One text may hold several words of an answer.
          if (item->opacity() == 0) continue;
          hidden.emplace_back(item, item->opacity());
          item->setOpacity(0);
        }
      }
      REQUIRE_FALSE(hidden.empty());
      CHECK(staged.leavesOpen(asked.question));
      for (const auto& [item, opacity] : hidden) item->setOpacity(opacity);
      REQUIRE_FALSE(staged.leavesOpen(asked.question));

      std::vector<std::unique_ptr<QQuickItem>> covers;
      for (const auto& [item, opacity] : hidden) covers.push_back(coverFor(*item));
      CHECK(staged.leavesOpen(asked.question));
      covers.clear();
      REQUIRE_FALSE(staged.leavesOpen(asked.question));

      for (const auto& [item, opacity] : hidden) item->setX(item->x() + 2 * staged.window().width());
      CHECK(staged.leavesOpen(asked.question));
      for (const auto& [item, opacity] : hidden) item->setX(item->x() - 2 * staged.window().width());

      std::vector<std::pair<QQuickItem*, QFont>> fonts;
      for (const auto& [item, opacity] : hidden) {
        if (!item->property("font").isValid()) continue;
        fonts.emplace_back(item, item->property("font").value<QFont>());
        QFont small = fonts.back().second;
        small.setPixelSize(small.pixelSize() / 4);
        item->setProperty("font", small);
      }
      if (!fonts.empty()) CHECK(staged.leavesOpen(asked.question));
      for (const auto& [item, font] : fonts) item->setProperty("font", font);
      tried.insert(asked.question);
    }
  }
  CHECK(tried.size() == tests::kQuestions);
}

int main(int argc, char* argv[]) {
  QGuiApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
