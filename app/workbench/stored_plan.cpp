#include "app/workbench/stored_plan.h"

#include <algorithm>
#include <functional>
#include <future>
#include <thread>
#include <utility>

#include "app/convert/content_hash.h"
#include "app/words/thing_words.h"
#include "core/base/json.h"
#include "core/base/strict_reader.h"
#include "core/base/text.h"
#include "core/craft/catalogue.h"
#include "core/craft/technique_reader.h"
#include "core/jobs/renewal.h"
#include "core/workflow/compose.h"

namespace app::workbench {
namespace {

using core::base::Message;
using core::base::Problem;
using core::base::Result;
using core::base::Value;
using core::intents::TakeIn;
using core::jobs::JobPlan;

// The stored name may date from before names had a greatest length.
std::string shown(const std::string& name) {
  using namespace core::base;
  return shownText(name, Lines::One, kLongestName);
}

bool isOfJob(const core::record::Event& event) { return core::base::startsWith(event.stream, "job/"); }

std::vector<core::record::Event> ofJob(const std::vector<core::record::Event>& events) {
  std::vector<core::record::Event> own;
  std::copy_if(events.begin(), events.end(), std::back_inserter(own), isOfJob);
  core::record::arrange(own);
  return own;
}

// `outer` with `why` as its argument "cause", whose own arguments stand behind "cause.": app/words says one in another.
Message because(Message outer, const Message& why) {
  outer.arguments.emplace_back("cause", why.id);
  for (const auto& [name, value] : why.arguments) outer.arguments.emplace_back("cause." + name, value);
  return outer;
}

Message because(Message outer, const core::base::Problems& problems) {
  for (const Problem& problem : problems.sorted()) {
    if (problem.severity != core::base::Severity::Error) continue;
    return because(std::move(outer).with("place", problem.pointer), problem.message);
  }
  return outer;
}

}  // namespace

std::optional<TakeIn> takenInBy(const core::record::Event& event) {
  const auto takenIn = core::record::as<core::record::JobTakenIn>(event);
  if (!takenIn || takenIn->job.empty() || !takenIn->techniques) return std::nullopt;
  return TakeIn{takenIn->job, shown(takenIn->title), shown(takenIn->reference), *takenIn->techniques};
}

std::vector<core::record::Event> takingsIn(const std::vector<core::record::Event>& events) {
  std::vector<core::record::Event> found = ofJob(events);
  std::erase_if(found, [](const core::record::Event& event) { return !takenInBy(event); });
  return found;
}

std::vector<TakeIn> plannedFrom(const std::vector<core::record::Event>& events) {
  const std::vector<core::record::Event> own = ofJob(events);
  const core::record::Event* renewal = core::jobs::newestRenewal(own);
  const auto renewed = renewal == nullptr ? std::nullopt : core::record::as<core::record::TechniquesRenewed>(*renewal);
  std::vector<TakeIn> plans;
  if (renewed && !renewed->techniques) return plans;
  for (const core::record::Event& event : own) {
    auto takenIn = takenInBy(event);
    if (!takenIn) continue;
    plans.push_back(*std::move(takenIn));
    if (renewed) plans.back().techniques = *renewed->techniques;
  }
  return plans;
}

std::optional<std::vector<TakeIn>> everPlannedFrom(const core::record::Event& takingIn,
                                                   const std::vector<core::record::Event>& events, std::size_t most) {
  std::vector<TakeIn> plans{takenInBy(takingIn).value_or(TakeIn())};
  const auto same = [](const core::record::TechniqueHashes& a, const core::record::TechniqueHashes& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const auto& one, const auto& other) { return one.id == other.id && one.hash == other.hash; });
  };
  for (const core::record::Event& event : ofJob(events)) {
    auto renewed = core::record::as<core::record::TechniquesRenewed>(event);
    if (!renewed) continue;
    if (!renewed->techniques) return std::nullopt;
    core::record::TechniqueHashes& techniques = *renewed->techniques;
    if (std::any_of(plans.begin(), plans.end(),
                    [&](const TakeIn& plan) { return same(plan.techniques, techniques); })) {
      continue;
    }
    if (plans.size() == most) break;
    plans.push_back(plans.front());
    plans.back().techniques = std::move(techniques);
  }
  return plans;
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

std::shared_ptr<const core::craft::Technique> PlanReader::atHand(const std::string& id, const std::string& text) const {
  if (m_library == nullptr) return nullptr;
  const auto there = m_library->texts.find(id);
  if (there == m_library->texts.end() || there->second != text) return nullptr;
  return m_library->catalogue.share(id);
}

namespace {

// Two jobs of the same texts are two plans: a plan names its job.
std::string keyOf(const std::string& jobId, const TakeIn& takenIn) {
  std::string key = jobId + '\n' + takenIn.jobHash;
  for (const TakeIn::Technique& used : takenIn.techniques) key += '\n' + used.id + ' ' + used.hash;
  return key;
}

}  // namespace

Result<PlanReader::Parts, Message> PlanReader::partsOf(const std::string& jobId, const TakeIn& takenIn,
                                                       const std::map<std::string, std::string>& more) {
  const auto textOfHash = [&](const std::string& hash, const std::string& name) -> Result<std::string, Message> {
    const auto found = more.find(hash);
    if (found != more.end()) return found->second;
    return storedText(m_store, hash, name);
  };
  auto jobText = textOfHash(takenIn.jobHash, takenIn.title);
  if (!jobText) return jobText.error();
  Parts parts{jobId, takenIn.jobHash, std::move(jobText).value(), {}};
  for (const TakeIn::Technique& used : takenIn.techniques) {
    std::shared_ptr<const core::craft::Technique>& known = m_techniques[used.hash];
    if (!known) {
      auto text = textOfHash(used.hash, used.id);
      if (!text) return text.error();
      known = atHand(used.id, text.value());
      if (!known) {
        core::craft::ReadTechnique technique = core::craft::readTechnique(text.value(), core::base::Source::Kept);
        if (!technique.technique) {
          return because(Message("kept.technique-unreadable").with("technique", used.id), technique.problems);
        }
        known = std::make_shared<const core::craft::Technique>(std::move(*technique.technique));
      }
    }
    parts.catalogue.add(known);
  }
  return parts;
}

PlanReader::Plan PlanReader::planOf(const Parts& parts, const core::workflow::ThingWords& words) {
  core::design::ReadDesign read = core::design::readDesign(parts.jobText, core::base::Source::Kept);
  if (!read.design) return because(Message("kept.job-unreadable"), read.problems);
  auto workflow = core::workflow::compose(*read.design, parts.catalogue, words);
  if (!workflow) return because(Message("kept.does-not-compose"), workflow.error().front().problem.message);
  auto plan = std::make_shared<JobPlan>();
  plan->id = parts.jobId;
  plan->jobHash = parts.jobHash;
  plan->design = std::move(*read.design);
  plan->workflow = std::move(workflow).value();
  return std::shared_ptr<const JobPlan>(std::move(plan));
}

Result<std::shared_ptr<const JobPlan>, Message> PlanReader::read(const std::string& jobId, const TakeIn& takenIn,
                                                                 const std::map<std::string, std::string>& more) {
  if (const auto ready = m_ready.extract(keyOf(jobId, takenIn))) return std::move(ready.mapped());
  auto parts = partsOf(jobId, takenIn, more);
  if (!parts) return parts.error();
  return planOf(parts.value(), words::thingWords());
}

void PlanReader::readAhead(const std::vector<Wanted>& wanted) {
  const std::size_t hands = std::min<std::size_t>(std::thread::hardware_concurrency(), wanted.size());
  if (hands < 2) return;
  const core::workflow::ThingWords words = words::thingWords();
  using Keyed = std::pair<std::string, Parts>;
  using Ready = std::vector<std::pair<std::string, Plan>>;
  std::vector<std::vector<Keyed>> shares(hands);
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    auto parts = partsOf(wanted[i].jobId, wanted[i].takenIn, {});
    if (parts) shares[i % hands].emplace_back(keyOf(wanted[i].jobId, wanted[i].takenIn), std::move(parts).value());
  }
  const auto compose = [&words](const std::vector<Keyed>& share) {
    Ready ready;
    for (const auto& [key, parts] : share) ready.emplace_back(key, planOf(parts, words));
    return ready;
  };
  std::vector<std::future<Ready>> others;
  for (std::size_t hand = 1; hand < hands; ++hand) {
    others.push_back(std::async(std::launch::async, compose, std::cref(shares[hand])));
  }
  const auto take = [this](Ready ready) {
    for (auto& [key, plan] : ready) m_ready.insert_or_assign(key, std::move(plan));
  };
  take(compose(shares[0]));
  for (auto& other : others) take(other.get());
}

Result<std::shared_ptr<const JobPlan>, Message> storedPlan(core::record::EventStore& store, const std::string& jobId,
                                                           const TakeIn& takenIn) {
  return PlanReader(store).read(jobId, takenIn);
}

}  // namespace app::workbench
