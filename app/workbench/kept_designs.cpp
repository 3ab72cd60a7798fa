#include "app/workbench/kept_designs.h"

#include <algorithm>

#include "core/base/text.h"

namespace app::workbench {

using core::base::Message;
using core::drafts::Drafted;

namespace {
constexpr std::string_view kPrefix = "design/";
}

Message KeptDesigns::load() {
  m_designs.clear();
  const auto streams = m_store.streams();
  if (!streams) return streams.error();
  for (const std::string& stream : streams.value()) {
    if (!core::base::startsWith(stream, kPrefix)) continue;
    const std::string id = stream.substr(kPrefix.size());
    Kept kept;
    if (auto events = m_store.load(stream)) kept.events = std::move(events).value();
    // Without its events it folds to nothing, and is spoilt.
    kept.drafted = core::drafts::foldDrafted(id, kept.events);
    kept.drafted.spoilt = kept.drafted.spoilt || kept.events.empty();
    m_designs.emplace(id, std::move(kept));
  }
  return {};
}

std::vector<const Drafted*> KeptDesigns::all() const {
  std::vector<const Drafted*> all;
  for (const auto& [id, kept] : m_designs) all.push_back(&kept.drafted);
  std::stable_sort(all.begin(), all.end(),
                   [](const Drafted* a, const Drafted* b) { return a->changedUtc > b->changedUtc; });
  return all;
}

const Drafted* KeptDesigns::find(const std::string& id) const {
  const auto found = m_designs.find(id);
  return found == m_designs.end() ? nullptr : &found->second.drafted;
}

Message KeptDesigns::ask(const std::string& id, const core::intents::DesignIntent& intent) {
  const auto decided = core::drafts::decide(find(id), intent);
  if (!decided) return decided.error();
  if (decided.value().empty()) return {};
  auto kept = m_keep(id, decided.value());
  if (!kept) return kept.error();
  Kept& design = m_designs[id];
  // An undo changes the state before it: only then are all events folded again.
  bool anew = design.events.empty();
  for (core::record::Event& event : std::move(kept).value()) {
    anew = anew || core::record::isA<core::record::Undone>(event);
    if (!anew) core::drafts::follow(design.drafted, event);
    design.events.push_back(std::move(event));
  }
  if (anew) design.drafted = core::drafts::foldDrafted(id, design.events);
  return {};
}

}  // namespace app::workbench
