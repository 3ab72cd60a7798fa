#pragma once
// The fields of a technique, a step and a wait, one row each: how it is written in a file, which placeholders are
// filled in, and what is reported where another version of the technique differs in it. Members about facts or figures
// have rows as well, but become the job's own facts and figures in the workflow, which compares those.
#include <functional>
#include <span>
#include <string>

#include "core/craft/reading.h"

namespace core::craft {

// A text of a technique with the properties of a thing in place of its {placeholders}.
using Fill = std::function<std::string(const std::string&)>;

template <typename Whole, typename Detail>
struct Field {
  const char* key;
  bool required = false;
  // Null where the field is read together with others, or is not written in a file by itself.
  void (*read)(const base::Node&, const Scope&, Whole&, base::Problems&) = nullptr;
  // Null where the field is about facts or figures.
  bool (*same)(const Detail&, const Detail&) = nullptr;
  // Null: it has no placeholders.
  void (*fill)(Detail&, const Fill&) = nullptr;
  const char* told = "";     // the message of a renewal; {before} {after} for "renewal.title" and "renewal.time"
  bool contradicts = false;  // a maker who did the step did something else
};

using StepField = Field<Step, StepDetail>;
using WaitField = Field<Wait, WaitDetail>;
using TechniqueField = Field<Technique, TechniqueDetail>;

// Returns the fields in the order in which a step lists them; "id" and "each" precede all of them.
std::span<const StepField> stepFields();
std::span<const WaitField> waitFields();
std::span<const TechniqueField> techniqueFields();

template <auto Member, typename Detail>
bool sameMember(const Detail& a, const Detail& b) {
  return a.*Member == b.*Member;
}
template <auto Member, typename Detail>
void fillText(Detail& detail, const Fill& fill) {
  detail.*Member = fill(detail.*Member);
}
template <auto Member, typename Detail>
void fillTexts(Detail& detail, const Fill& fill) {
  for (std::string& text : detail.*Member) text = fill(text);
}

// Returns how many rows are for a detail's own members: those that have a message. Function pointers could be compared
// instead, but with the sanitizers on the compiler does not take that for a constant.
template <typename Fields>
constexpr std::size_t ownFields(const Fields& fields) {
  std::size_t own = 0;
  for (const auto& field : fields) own += *field.told != 0 ? 1 : 0;
  return own;
}

}  // namespace core::craft
