#pragma once
// Designs under way at the desk, read from the store and kept in step with it.
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/record/drafted.h"
#include "core/record/event_store.h"

namespace app::workbench {

class KeptDesigns {
 public:
  // Stamps and keeps drafts on the stream of that id.
  using Keep = std::function<core::base::Result<std::vector<core::record::Event>, core::base::Message>(
      const std::string& id, const core::record::EventDraft& draft)>;

  KeptDesigns(core::record::EventStore& store, Keep keep) : m_store(store), m_keep(std::move(keep)) {}

  // Forgets what it holds and reads every stream of designs. Only where the store itself cannot be read is that
  // returned; a design whose events do not read is entered as spoilt.
  core::base::Message load();

  // Newest change first.
  std::vector<const core::record::Drafted*> all() const;
  // Null where there is none; stays where it is until `load`.
  const core::record::Drafted* find(const std::string& id) const;

  // Refusals: the store's, core::record's of drafted.h, and design.no-such-design.
  core::base::Message begin(const std::string& id, const core::base::Value& document, const std::string& from);
  core::base::Message change(const std::string& id, const core::base::Value& patch);
  core::base::Message undo(const std::string& id);
  core::base::Message redo(const std::string& id);
  // Away, or back; nothing is written where it is there.
  core::base::Message move(const std::string& id, bool away);
  core::base::Message taken(const std::string& id, const std::string& jobId);

 private:
  struct Kept {
    std::vector<core::record::Event> events;
    core::record::Drafted drafted;
  };
  using Decision = core::base::Result<core::record::EventDraft, core::base::Message>;
  core::base::Message keep(const std::string& id, const Decision& decided);

  core::record::EventStore& m_store;
  Keep m_keep;
  std::map<std::string, Kept> m_designs;
};

}  // namespace app::workbench
