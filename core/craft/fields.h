#pragma once
// The fields of a technique, a step and a wait, a row each: how a file says it, whose words are filled in, and what is
// told where another version of the technique says something else. What speaks of facts or figures is a row as well,
// but becomes the job's own facts and figures in the workflow, which compares those.
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
  // Null: read together with others, or nothing that a file says by itself.
  void (*read)(const base::Node&, const Scope&, Whole&, base::Problems&) = nullptr;
  // Null: speaks of facts or figures.
  bool (*same)(const Detail&, const Detail&) = nullptr;
  // Null: it has no placeholders.
  void (*fill)(Detail&, const Fill&) = nullptr;
  const char* told = "";     // the message of a renewal; {before} {after} for "renewal.title" and "renewal.time"
  bool contradicts = false;  // whoever did the step did something else
};

using StepField = Field<Step, StepDetail>;
using WaitField = Field<Wait, WaitDetail>;
using TechniqueField = Field<Technique, TechniqueDetail>;

// In the order in which a step says them; "id" and "each" come before all of them.
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

// How many rows are of a detail's own members.
template <typename Fields>
constexpr std::size_t ownFields(const Fields& fields) {
  std::size_t own = 0;
  for (const auto& field : fields) own += field.same != nullptr ? 1 : 0;
  return own;
}

}  // namespace core::craft
