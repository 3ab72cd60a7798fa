#pragma once
// Designs under way at the desk, read from the store and kept in step with it.
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/drafts/drafted.h"
#include "core/record/event_store.h"

namespace app::workbench {

class KeptDesigns {
 public:
  // Stamps drafts and stores them on the stream of that id, as one act.
  using Keep = std::function<core::base::Result<std::vector<core::record::Event>, core::base::Message>(
      const std::string& id, const std::vector<core::record::EventDraft>& drafts)>;

  KeptDesigns(core::record::EventStore& store, Keep keep) : m_store(store), m_keep(std::move(keep)) {}

  // Clears the designs and reads every stream of designs again. Returns an error only where the store itself cannot be
  // read; a design whose events cannot be read is entered as spoilt.
  core::base::Message load();

  // Returns the designs, newest change first.
  std::vector<const core::drafts::Drafted*> all() const;
  // Returns null where there is none; the pointer is valid until `load`.
  const core::drafts::Drafted* find(const std::string& id) const;

  // The refusals are the store's and those of core::drafts::decide.
  core::base::Message ask(const std::string& id, const core::intents::DesignIntent& intent);

 private:
  struct Kept {
    std::vector<core::record::Event> events;
    core::drafts::Drafted drafted;
  };

  core::record::EventStore& m_store;
  Keep m_keep;
  std::map<std::string, Kept> m_designs;
};

}  // namespace app::workbench
