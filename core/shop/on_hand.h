#pragma once
// Records the pieces a shop has cut and the offcuts it has kept: a part of its state, from the events of the bench
// streams.
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/result.h"
#include "core/intents/intent.h"
#include "core/record/event.h"

namespace core::shop {

struct KeptOffcut {
  std::string id;  // of the event that recorded it, with its index there: "<event id>/0"
  // The number the maker writes on it, counted through the shop. Two benches may have given the same one; its size and
  // the job distinguish them.
  std::int64_t mark = 0;
  intents::Offcut piece;
  std::string job;           // it was left over from
  std::int64_t keptUtc = 0;  // ms
  std::string intentId;      // of the act that kept it
};

// The part of a job that is cut already.
struct CutSoFar {
  std::map<std::string, int> pieces;  // of the cutting list, by id
  std::map<std::string, int> sheets;  // new ones, by the job's stock id
};

struct OnHand {
  std::vector<KeptOffcut> offcuts;      // there now, oldest first
  std::map<std::string, CutSoFar> cut;  // by job
  std::int64_t lastMark = 0;            // the highest that was ever given
  // Live acts that cut or dropped, oldest first: these can be taken back.
  struct Act {
    std::string intentId;
    std::string job;       // "" for a drop
    std::size_t kept = 0;  // offcuts
  };
  std::vector<Act> acts;

  const KeptOffcut* offcut(const std::string& id) const;
  // Returns how many of the offcuts an act kept are still there.
  std::size_t stillThere(const std::string& intentId) const;
};

// Requires fold order. Members of an event that cannot be read are left out.
OnHand foldOnHand(const std::vector<record::Event>& events, const std::set<std::string>& voided);

// Refusals: shop.no-such-offcut, shop.nothing-cut, shop.offcut-out-of-range; shop.no-such-cut where there is no such
// act to take back; shop.offcut-used where an offcut it kept was cut up or dropped since.
base::Result<std::vector<record::EventDraft>, base::Message> decideCut(const OnHand& onHand,
                                                                       const intents::CutSheet& intent);
base::Result<std::vector<record::EventDraft>, base::Message> decideDrop(const OnHand& onHand,
                                                                        const intents::DropOffcut& intent);
base::Result<std::vector<record::EventDraft>, base::Message> decideUndo(const OnHand& onHand,
                                                                        const intents::UndoInShop& intent);

}  // namespace core::shop
