#include "tests/core/craft/full_technique.h"

#include "core/craft/technique_reader.h"
#include "tests/support/catch.h"

namespace craft_tests {

std::string fullTechnique() {
  return R"json(
{
  "format": "mountwright-technique/1",
  "id": "lay-band",
  "title": "Lay a band of printed paper",
  "role": "band",
  "rank": 40,
  "reversal": {"how": "It comes undone with water.", "source": "common practice"},
  "when": {"each": "band", "where": {"motif": ["mirror", "plain"], "paper": "wave-block print"}, "deliver": ["framed"], "artwork": ["overlap", "float"], "spacer": ["yes"], "decorated": ["yes", "no"]},
  "repeat": {"area": "band.this.area", "each": "20000 mm2", "source": "common practice"},
  "wants": [
    {"of": "lap", "atLeast": "5 mm", "why": "A narrower lap lets go.", "source": "common practice"},
    {"of": "humidity", "atMost": "60 %", "why": "Damp paper cockles.", "source": "common practice"},
    {"where": {"motif": "mirror"}, "why": "A plain paper shows every join.", "source": "common practice"},
    {"without": "package.glazing.charged", "why": "Static lifts the print.", "source": "common practice"}
  ],
  "stage": "paper",
  "together": [
    {"steps": ["cut-strip"], "over": "owner", "title": "Cut the strips of the {name}", "alike": ["paper"], "way": "short"}
  ],
  "steps": [
    {
      "id": "cut-strip",
      "each": "strip",
      "where": {"side": ["top", "bottom", "left", "right"], "repeat": "yes"},
      "title": "Cut the {side} strip of {paper}",
      "do": ["Lay the {paper} face down.", "Cut the {name} along the rule."],
      "good": "Both ends are square.",
      "trap": "A blunt blade drags the print.",
      "tools": ["knife", "steel rule"],
      "materials": [
        {"what": "{paper}", "amount": {"count": 1, "unit": "pieces", "source": "common practice"}},
        {"what": "starch paste", "amount": {"figure": "band.owner.area", "factor": 0.00015, "unit": "ml", "source": "common practice"}},
        {"what": "blotter"}
      ],
      "setup": {"tool": "cutter", "figures": ["band.owner.strip.width", {"id": "band.owner.strip.axis", "as": "length"}], "words": "for {paper}", "afresh": false},
      "stage": "cut",
      "once": false,
      "figures": ["band.owner.strip.axis", {"id": "band.owner.strip.width", "count": 2, "from": "cut end to cut end", "by": "marks"}],
      "checks": [
        {"ask": "Is the strip square?"},
        {"ask": "How long is the strip?", "figure": "band.owner.strip.axis", "within": "0.5 mm"},
        {"ask": "Where does the motif begin?", "figure": "band.owner.firstMotif.axis", "within": "as computed"}
      ],
      "cautions": [
        {"word": "CAUTION", "sign": "W022", "hazard": "blade", "text": "Blade cuts. Keep fingers behind the rule."},
        {"word": "NOTICE", "hazard": "paper", "text": "Damp hands stain the print.", "room": {"below": "10 C", "above": "65 %"}}
      ],
      "hands": "blade",
      "up": "back",
      "act": "cutStrips",
      "places": ["tool", "work"],
      "work": {"early": "2 min", "likely": "3 min", "late": "6 min", "source": "common practice"},
      "needs": [
        "art.away",
        "previous.cut",
        {"every": "corner", "of": "adjoining", "is": "marked"},
        {"anyOf": ["paste.starch.ready", {"every": "board", "of": "outermost", "is": "window.cut"}]}
      ],
      "makes": ["this.cut"],
      "asMade": ["band.owner.strip.axis"],
      "faults": [
        {"id": "torn", "seen": "The strip is torn.", "do": "Cut another.", "ends": ["this.*"]},
        {"id": "long", "seen": "The strip is long.", "ways": [
          {"id": "trim", "key": "Trim it", "do": "Trim the {side} strip.", "ends": []},
          {"id": "anew", "key": "Cut anew", "do": "Cut a new strip.", "ends": ["this.cut"]}
        ]}
      ]
    },
    {
      "id": "paste-strip",
      "each": "strip",
      "title": "Paste the {side} strip",
      "do": ["Brush the paste from the middle outwards."],
      "good": "An even sheen.",
      "hands": "paste",
      "work": {"early": "1 min", "likely": "2 min", "late": "4 min", "source": "common practice"},
      "uninterruptible": true,
      "resource": "press",
      "needs": ["this.cut"],
      "makes": ["this.wet"],
      "ends": ["boards.bare"],
      "waits": [
        {
          "id": "open",
          "kind": "open",
          "title": "paste stays open",
          "makes": "this.pasted",
          "opens": {"early": "0 s", "likely": "0 s", "late": "0 s"},
          "closes": {"early": "3 min", "likely": "5 min", "late": "8 min"},
          "model": "evaporation",
          "at": {"temperature": "20 C", "humidity": "55 %"},
          "attended": true,
          "test": "The sheen is still wet.",
          "answers": {"notYet": "No sheen", "found": "Glossy", "pastIt": "Dull"},
          "source": "common practice",
          "ifMissed": {"do": "Brush on fresh paste.", "ends": ["this.wet", {"every": "strip", "of": "owner", "is": "wet"}]}
        },
        {
          "id": "dry",
          "kind": "dry",
          "title": "strip dries",
          "makes": "this.dry",
          "follows": "this.wet",
          "opens": {"early": "20 min", "likely": "30 min", "late": "1.5 h"},
          "model": "oxidation",
          "punctual": true,
          "test": "The back of a finger feels no cold.",
          "source": "common practice"
        }
      ]
    },
    {
      "id": "smooth",
      "each": "part",
      "title": "Smooth part {number} of {of}",
      "do": ["Work from the middle outwards."],
      "good": "No bubbles.",
      "hands": "clean",
      "work": {"early": "1 min", "likely": "2 min", "late": "4 min", "source": "common practice"},
      "needs": [{"every": "strip", "of": "owner", "is": "pasted"}],
      "makes": ["this.smoothed"]
    },
    {
      "id": "finish",
      "title": "Look over the {name}",
      "do": ["Hold the piece to the light."],
      "good": "All four corners meet.",
      "hands": "clean",
      "up": "face",
      "work": {"early": "1 min", "likely": "2 min", "late": "4 min", "source": "common practice"},
      "needs": [{"every": "part", "of": "this", "is": "smoothed"}, {"every": "line", "of": "reach", "is": "dry"}],
      "makes": ["this.fitted"]
    }
  ]
}
)json";
}

std::string changed(std::string_view from, std::string_view to) {
  std::string text = fullTechnique();
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  REQUIRE(text.find(from, at + 1) == std::string::npos);
  return text.replace(at, from.size(), to);
}

std::vector<std::string> problemsOf(const std::string& text) {
  std::vector<std::string> problems;
  for (const auto& problem : core::craft::readTechnique(text).problems.sorted()) {
    problems.push_back(problem.pointer + ' ' + problem.message.id);
  }
  return problems;
}

void requireEach(const std::vector<Broken>& cases) {
  for (const Broken& broken : cases) {
    INFO(broken.claim);
    INFO(broken.to);
    const std::string text = changed(broken.from, broken.to);
    CHECK_THAT(problemsOf(text), Catch::Matchers::Equals(std::vector<std::string>{broken.problem}));
    CHECK_FALSE(core::craft::readTechnique(text).technique.has_value());
  }
}

}  // namespace craft_tests
