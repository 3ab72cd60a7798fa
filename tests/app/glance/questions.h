#pragma once
// What a maker asks of a screen in one glance, when each question arises, and which items answer it.
#include <QQuickWindow>
#include <QStringList>
#include <string>
#include <vector>

#include "app/viewmodels/desk.h"

namespace tests {

enum class Question { Now, Number, Edge, SideUp, HowMany, Runs, When, DoneLast, Stage, Wet };
inline constexpr int kQuestions = 10;
const char* wordsOf(Question question);

// Where the maker stands, and what has called.
enum class Glance { AtBench, FromAfar, OnAlert };

// A question that arises, with what has to be read for an answer: all of `all`, and one of `any` where there are any.
// Where both are empty a drawing answers.
struct Asked {
  Question question = Question::Now;
  QStringList all;
  QStringList any;
  double share = 1;  // of the size that the answer has at the least
};

// The questions that arise in the desk's present state. Nothing but the state decides: a number in hand asks for
// itself, for its edge and for how many; a wait that runs asks what it is, when it calls and what is wet.
std::vector<Asked> askedIn(app::viewmodels::Desk& desk, Glance glance);

struct Open {
  Question question = Question::Now;
  std::string why;
};

// The questions that the window leaves open. What answers has to be read from where the maker stands, to lie in the
// window and to be seen: made clear, it has to be missed all along its length.
std::vector<Open> openIn(QQuickWindow& window, const std::vector<Asked>& asked, Glance glance, double dotsPerMm);

// The items that answer the question: texts, or a drawing.
std::vector<QQuickItem*> answering(QQuickWindow& window, const Asked& asked, Glance glance);

}  // namespace tests
