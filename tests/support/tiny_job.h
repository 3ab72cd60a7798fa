#pragma once
// A job of four steps: a paste of the shop, soaked and cooked, and a size that tacks and takes the leaf while it does.
#include <string>

namespace tests {

inline constexpr const char* kTinyJob = R"({"format": "mountwright-job/1", "title": "Reed bed", "reference": "26-001",
  "artwork": {"width": "310 mm", "height": "240 mm"},
  "mount": {"window": {"shape": "rectangle", "overlap": "3 mm"}, "boards": [{"id": "top", "thickness": "1.5 mm"}],
            "borders": {"sides": "70 mm", "weighting": "equal"}}})";

inline constexpr const char* kTinyPaste =
    R"({"format": "mountwright-technique/1", "id": "paste", "title": "Paste", "rank": 1,
  "scope": "shop", "keeps": {"for": "1 week", "source": "common practice"}, "when": {"needed": true}, "steps": [
  {"id": "soak", "title": "Soak the starch", "do": ["Stir."], "good": "Smooth.", "trap": "Lumps.", "tools": [],
   "hands": "clean", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "makes": ["paste.soaking"],
   "waits": [{"id": "soaks", "kind": "soak", "title": "starch soaks", "makes": "paste.soaked", "model": "none",
     "opens": {"early": "20 min", "likely": "60 min", "late": "90 min"}, "test": "Feel it.", "source": "common practice"}]},
  {"id": "cook", "title": "Cook the paste", "do": ["Stir."], "good": "Clear.", "trap": "Burnt.", "tools": [],
   "hands": "clean", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "needs": ["paste.soaked"], "makes": ["paste.ready"]}]})";

inline constexpr const char* kTinySize =
    R"({"format": "mountwright-technique/1", "id": "size", "title": "Size", "rank": 2,
  "when": {"always": true}, "steps": [
  {"id": "brush", "title": "Brush size", "do": ["Brush."], "good": "Thin.", "trap": "Thick.", "tools": [],
   "hands": "paint", "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "needs": ["paste.ready"], "makes": ["piece.sized"],
   "faults": [{"id": "thick", "seen": "Too thick.", "do": "Wipe it off.", "ends": ["piece.sized"]}],
   "waits": [{"id": "tack", "kind": "tack", "title": "size tacks", "makes": "piece.tack", "model": "evaporation",
     "opens": {"early": "10 min", "likely": "20 min", "late": "30 min"},
     "closes": {"early": "40 min", "likely": "50 min", "late": "90 min"},
     "test": "Touch it.", "source": "common practice", "ifMissed": {"do": "Size again.", "ends": ["piece.sized"]}}]},
  {"id": "lay", "title": "Lay leaf", "do": ["Lay."], "good": "Whole.", "trap": "Torn.", "tools": [], "hands": "leaf",
   "work": {"early": "1 min", "likely": "2 min", "late": "3 min", "source": "common practice"},
   "needs": ["piece.tack"], "makes": ["piece.laid"]}]})";

}  // namespace tests
