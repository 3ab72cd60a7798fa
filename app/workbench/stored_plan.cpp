#include "app/workbench/stored_plan.h"

#include <algorithm>

#include "app/convert/content_hash.h"
#include "app/words/words.h"
#include "core/base/json.h"
#include "core/craft/catalogue.h"
#include "core/craft/technique_reader.h"
#include "core/record/renewal.h"
#include "core/workflow/compose.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Problem;
using core::base::Result;
using core::base::Value;
using core::intents::TakeIn;
using core::record::JobPlan;

std::optional<std::string> textOf(const Value& object, std::string_view key) {
  const Value* value = object.find(key);
  if (value == nullptr || value->kind() != Value::Kind::Text) return std::nullopt;
  return value->asText();
}

std::string firstError(const core::base::Problems& problems) {
  for (const Problem& problem : problems.sorted()) {
    if (problem.severity == core::base::Severity::Error) return core::base::dump(problem);
  }
  return "";
}

}  // namespace

std::optional<Techniques> readTechniques(const Value& payload) {
  const Value* techniques = payload.find("techniques");
  if (techniques == nullptr || techniques->kind() != Value::Kind::Object) return std::nullopt;
  Techniques read;
  for (const auto& [id, hash] : techniques->members()) {
    if (hash.kind() != Value::Kind::Text) return std::nullopt;
    read.push_back({id, hash.asText()});
  }
  return read;
}

std::optional<TakeIn> readTakenIn(const Value& payload) {
  TakeIn takenIn;
  const auto jobHash = textOf(payload, "job");
  auto techniques = readTechniques(payload);
  if (!jobHash || !techniques) return std::nullopt;
  takenIn.jobHash = *jobHash;
  takenIn.title = textOf(payload, "title").value_or("");
  takenIn.reference = textOf(payload, "reference").value_or("");
  takenIn.techniques = *std::move(techniques);
  return takenIn;
}

std::optional<TakeIn> plannedFrom(const std::vector<core::record::Event>& events) {
  const auto first = std::find_if(events.begin(), events.end(), [](const core::record::Event& event) {
    return event.type == core::record::type::kJobTakenIn;
  });
  if (first == events.end() || first->version != 1) return std::nullopt;
  auto takenIn = readTakenIn(first->payload);
  const core::record::Event* renewal = takenIn ? core::record::newestRenewal(events) : nullptr;
  if (renewal == nullptr) return takenIn;
  auto techniques = readTechniques(renewal->payload);
  if (!techniques) return std::nullopt;
  takenIn->techniques = *std::move(techniques);
  return takenIn;
}

Result<std::string, Message> storedText(core::record::EventStore& store, const std::string& hash,
                                        const std::string& name) {
  auto text = store.text(hash);
  if (!text) return text.error();
  if (!text.value()) return Message("kept.text-missing").with("name", name);
  std::string body = text.value()->body;
  if (convert::contentHash(body) != hash) return Message("kept.text-damaged").with("name", name);
  return body;
}

Result<std::shared_ptr<const JobPlan>, Message> PlanReader::read(const std::string& jobId, const TakeIn& takenIn,
                                                                 const std::map<std::string, std::string>& more) {
  const auto textOfHash = [&](const std::string& hash, const std::string& name) -> Result<std::string, Message> {
    const auto found = more.find(hash);
    if (found != more.end()) return found->second;
    return storedText(m_store, hash, name);
  };
  auto jobText = textOfHash(takenIn.jobHash, takenIn.title);
  if (!jobText) return jobText.error();
  core::design::ReadDesign read = core::design::readDesign(jobText.value());
  if (!read.design) return Message("kept.job-unreadable").with("detail", firstError(read.problems));

  core::craft::Catalogue catalogue;
  for (const TakeIn::Technique& used : takenIn.techniques) {
    std::shared_ptr<const core::craft::Technique>& known = m_techniques[used.hash];
    if (!known) {
      auto text = textOfHash(used.hash, used.id);
      if (!text) return text.error();
      core::craft::ReadTechnique technique = core::craft::readTechnique(text.value());
      if (!technique.technique) {
        return Message("kept.technique-unreadable")
            .with("technique", used.id)
            .with("detail", firstError(technique.problems));
      }
      known = std::make_shared<const core::craft::Technique>(std::move(*technique.technique));
    }
    catalogue.add(*known);
  }
  auto workflow = core::workflow::compose(*read.design, catalogue, words::thingWords());
  if (!workflow) {
    const Message& why = workflow.error().front().problem.message;
    return Message("kept.does-not-compose").with("detail", words::text(why, read.design->job.units).toStdString());
  }
  auto plan = std::make_shared<JobPlan>();
  plan->id = jobId;
  plan->jobHash = takenIn.jobHash;
  plan->design = std::move(*read.design);
  plan->workflow = std::move(workflow).value();
  return std::shared_ptr<const JobPlan>(std::move(plan));
}

Result<std::shared_ptr<const JobPlan>, Message> storedPlan(core::record::EventStore& store, const std::string& jobId,
                                                           const TakeIn& takenIn) {
  return PlanReader(store).read(jobId, takenIn);
}

}  // namespace app::workbench
