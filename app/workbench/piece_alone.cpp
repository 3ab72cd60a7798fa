// The text and the plan of a job of one piece, made from those of a job of several.
#include "app/convert/content_hash.h"
#include "app/workbench/record_exchange.h"
#include "core/base/json.h"
#include "core/design/design.h"
#include "core/jobs/one_piece.h"

namespace app::workbench {

using core::base::Message;
using core::base::Result;
using core::base::Value;
using core::record::Event;

namespace {

// "26-041 3/12"; "3/12" where the job has no reference.
std::string referenceOf(const std::string& whole, int number, int count) {
  return (whole.empty() ? whole : whole + ' ') + std::to_string(number) + '/' + std::to_string(count);
}

// The text is that of a job that opens, so it reads.
std::string textOfPiece(const std::string& whole, const std::string& reference) {
  const core::base::ParsedJson parsed = core::base::parseJson(whole);
  Value job = Value::object();
  for (const auto& [key, member] : parsed.root.members()) {
    if (key != "count" && key != "reference") job.set(key, member);
  }
  job.set("reference", Value::text(reference));
  return core::base::writeJson(job, 2) + "\n";
}

}  // namespace

Result<PieceAlone, Message> pieceAlone(const std::string& jobId, int number, const std::vector<Event>& events,
                                       core::record::EventStore& store) {
  PlanReader reader(store);
  const auto planned = plannedFrom(events);
  if (planned.empty()) return Message("kept.taking-in-unreadable");
  core::intents::TakeIn takenIn = planned.front();
  const auto text = storedText(store, takenIn.jobHash, takenIn.title);
  if (!text) return text.error();
  const core::design::ReadDesign whole = core::design::readDesign(text.value());
  const int count = whole.design ? whole.design->job.count : 1;
  if (count == 1 || number < 1 || number > count) {
    return Message("export.no-such-piece").with("count", static_cast<std::int64_t>(count));
  }
  core::jobs::OnePiece piece;
  piece.number = number;
  piece.title = takenIn.title;
  piece.reference = referenceOf(takenIn.reference, number, count);
  PieceAlone alone;
  alone.jobId = core::jobs::idOfPiece(jobId, number);
  alone.job.body = textOfPiece(text.value(), piece.reference);
  alone.job.hash = convert::contentHash(alone.job.body);
  alone.job.kind = "job";
  alone.job.name = piece.title;
  piece.jobHash = takenIn.jobHash = alone.job.hash;
  const auto one = reader.read(alone.jobId, takenIn, {{alone.job.hash, alone.job.body}});
  if (!one) return one.error();
  piece.of = &one.value()->workflow;
  alone.events = core::jobs::eventsOfPiece(events, piece);
  return alone;
}

}  // namespace app::workbench
