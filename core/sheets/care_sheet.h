#pragma once
// The sheets that go with a piece: one for the client, in plain words, and one for the conservator who takes it apart
// one day. Data, not a page: sections of lines, each with the source it is known from. Anything not entered, computed
// or observed is stated as unknown; nothing is ever called safe or permanent.
//
// The contents of the conservator's sheet follow the AIC's commentaries 24 and 28 (purpose, who, when, identity; media,
// treatments) and what this craft adds: where each material is and whether it touches the work.
#include <functional>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/jobs/job_state.h"
#include "core/jobs/timeline.h"
#include "core/units/length_display.h"

namespace core::sheets {

enum class CareFor { Client, Conservator };

// The source of a line.
enum class CareKnown {
  Entered,   // by the maker: in the job's file or at the bench
  Default,   // the job's file leaves it to its default
  Computed,  // from what was entered
  Observed,  // at the bench: done, measured, tested, photographed
  Stated,    // by a technique or common practice: see `source`
  Unknown,
};

struct CareLine {
  base::Message label;
  std::vector<base::Message> values;  // never empty
  CareKnown known = CareKnown::Unknown;
  std::string source;  // of Stated
};

struct CareSection {
  std::string id;  // "identity", "layers"
  base::Message title;
  std::vector<CareLine> lines;  // never empty
};

struct CareSheet {
  CareFor kind = CareFor::Client;
  base::Message title;
  std::vector<CareSection> sections;
};

// Texts that the core has no words for.
struct CareWords {
  std::function<std::string(std::int64_t utc, const std::string& zone)> moment;  // date and time
  std::function<std::string(std::int64_t utc, const std::string& zone)> day;
  std::function<std::string(const design::Figure&)> figure;
  std::function<std::string(units::Duration)> duration;
};

struct CareInput {
  const jobs::JobState& state;
  const shop::Shop& shop;
  const std::vector<jobs::TimelineEntry>& timeline;  // oldest first
  // The job's file, so that a default can be distinguished from an entered value; with "" nothing is called a default.
  std::string jobText;
  units::UnitSystem units = units::UnitSystem::Millimetres;
  const CareWords& words;
};

CareSheet careSheet(CareFor kind, const CareInput& input);

std::string_view name(CareFor kind);     // "client", "conservator"
std::string_view name(CareKnown known);  // "entered", ..., "unknown"

}  // namespace core::sheets
