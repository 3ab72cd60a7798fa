#pragma once
// A technique: one craft process as data. This is the content of a technique file once it has been read strictly.
// Nothing here depends on a technique's name.
//
// Facts and figures are written as patterns that speak of "this" board, band, strip, corner, line, leaf field
// or part; the workflow puts the job's own ids in.
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/craft/act.h"
#include "core/craft/act_place.h"
#include "core/craft/circumstance.h"
#include "core/craft/room_bounds.h"
#include "core/craft/stage.h"
#include "core/craft/want.h"
#include "core/units/climate.h"
#include "core/units/duration.h"
#include "core/units/marking.h"
#include "core/units/span.h"

namespace core::craft {

// The things that a technique or a step is done for, once each.
enum class ThingKind {
  Once,      // the job as a whole
  Board,     // outermost first
  Bevel,     // a board whose bevel is coloured; the thing is the board
  Band,      // innermost first
  Strip,     // of a band: top, right, bottom, left; the thing is "<band>.<side>"
  Corner,    // of a band: tl, tr, br, bl; the thing is "<band>.corner.<corner>"
  Line,      // innermost first
  Spandrel,  // in the order of the job
  Wash,      // in the order of the job
  Leaf,      // a leaf field, in the order of the job
  Part,      // of the technique's own thing, as its "repeat" splits it; the thing is "<thing>#<n>"
};

// The things of a kind that a quantified fact is about.
enum class Relation {
  Job,        // all of the job
  This,       // those that belong to this thing: strips and corners of a band, parts of a field
  Owner,      // those that belong to the same owner as this thing
  Reach,      // those that touch this thing's area or lie inside it
  Adjoining,  // the strips that share this corner; the corners at the ends of this strip
  Outermost,  // the first board
  Innermost,  // the last board
};

// Property name -> accepted values; a thing has them all or is not meant. Properties of things: see
// recipes/README.md.
using Where = std::map<std::string, std::vector<std::string>>;

// A pattern of facts that must all hold: "this.window.cut", "previous.ruled", "owner.fitted", "art.away", or every
// thing of a kind and relation, with the wanted properties, with that fact. A pattern without any such thing (no
// previous board) holds vacuously.
struct FactPattern {
  std::string text;                // for a plain pattern
  std::optional<ThingKind> every;  // for a quantified one
  Relation of = Relation::Job;
  Where where;
  std::string is;       // the fact of each, without the thing
  std::string pointer;  // its place in the file

  friend bool operator==(const FactPattern&, const FactPattern&) = default;
};

// One need: all of `all`, or with several alternatives the first that this job can make.
struct Need {
  std::vector<FactPattern> alternatives;  // never empty; one entry means no choice

  friend bool operator==(const Need&, const Need&) = default;
};

using units::Span;

enum class WaitKind { Dry, Cure, Press, Tack, Open, Soak, Rest };
enum class DryingModel { None, Evaporation, Oxidation };

struct IfMissed {
  std::string say;                // what to do then, a sentence
  std::vector<FactPattern> ends;  // facts that must be made again

  friend bool operator==(const IfMissed&, const IfMissed&) = default;
};

// The names of the answers of a touch test: short words for a key. "" where the file gives none, so that the wait's
// kind decides the words.
struct Answers {
  std::string notYet;
  std::string found;
  std::string pastIt;  // only of a wait that closes

  friend bool operator==(const Answers&, const Answers&) = default;
};

// The members of a wait other than its facts. A new member needs its row in waitFields (wait_reader.cpp), which will
// not compile without it.
struct WaitDetail {
  WaitKind kind = WaitKind::Dry;
  std::string title;           // what the shelf calls it: "bevel dries"
  Span opens;                  // after the step is done
  std::optional<Span> closes;  // after the step is done; only where the fact stops being true
  DryingModel model = DryingModel::None;
  units::Room reference = {units::Temperature::celsius(23), units::Humidity::percent(50)};  // of the spans
  bool attended = false;                                                                    // someone must stay
  bool punctual = false;  // it harms to leave it beyond its late end
  std::string test;       // the touch test that ends it
  Answers answers;
  std::string source;

  friend bool operator==(const WaitDetail&, const WaitDetail&) = default;
};

struct Wait : WaitDetail {
  std::string id;
  FactPattern makes;
  std::optional<FactPattern> follows;  // the fact that ends when this one is true
  std::optional<IfMissed> ifMissed;    // always present with closes
  std::string pointer;

  friend bool operator==(const Wait&, const Wait&) = default;
};

enum class SignalWord { Warning, Caution, Notice };

struct Caution {
  SignalWord word = SignalWord::Caution;
  std::string sign;    // an ISO 7010 number ("W022"), empty for none
  std::string hazard;  // one or two words: "blade"
  std::string text;    // consequence and avoidance, at most 12 words
  RoomBounds room;     // that it is for

  friend bool operator==(const Caution&, const Caution&) = default;
};

struct Amount {
  std::string figure;  // a figure pattern; empty: a plain count of pieces
  double factor = 1;   // amount = figure value x factor, or the count itself
  std::string unit;    // "ml", "mm", "g", "sheets", "pieces"
  std::string source;

  friend bool operator==(const Amount&, const Amount&) = default;
};

struct Material {
  std::string what;
  std::optional<Amount> amount;

  friend bool operator==(const Material&, const Material&) = default;
};

struct StepFigure {
  // Pattern of a figure id: "board.this.mark.left", "band.owner.strip.axis". With "*" as its last word it stands for
  // every figure whose id begins so, in the design's order: "board.this.arc.*". There need not be any.
  std::string figure;
  int count = 1;                     // how many pieces have this measure
  std::string from;                  // datum in words where it is more precise than the figure's own; may be empty
  std::optional<units::Marking> by;  // the way of marking a window that needs it; nothing: both

  friend bool operator==(const StepFigure&, const StepFigure&) = default;
};

struct Check {
  std::string ask;
  std::string figure;  // figure it is compared with; empty for yes or no
  std::string within;  // tolerance as text, with its unit; empty for yes or no

  friend bool operator==(const Check&, const Check&) = default;
};

// One of the ways out of a fault that leaves the maker a choice.
struct FaultWay {
  std::string id;
  std::string key;   // the text of its key: "Close it"
  std::string mend;  // the file's "do"
  std::vector<FactPattern> ends;

  friend bool operator==(const FaultWay&, const FaultWay&) = default;
};

struct Fault {
  std::string id;
  std::string seen;
  std::string mend;  // the file's "do"; "" with ways
  std::vector<FactPattern> ends;
  std::vector<FaultWay> ways;  // two or three, or none

  friend bool operator==(const Fault&, const Fault&) = default;
};

enum class Hands { Clean, Paste, Paint, Leaf, Blade };
enum class WayUp { Face, Back, None };

// One of the measures a tool is set to.
struct SetupFigure {
  std::string figure;  // a figure pattern
  std::string as;      // what is set by it: "depth"; "" where the file does not say

  friend bool operator==(const SetupFigure&, const SetupFigure&) = default;
};

// How a tool is set for the steps that need what the step makes.
struct Setup {
  std::string tool;                  // "cutter"
  std::vector<SetupFigure> figures;  // it is set to
  std::string words;                 // what else it is set to, may hold {placeholders}; "" for nothing
  bool afresh = false;               // for each thing, though the tool stands so already
  std::string pointer;

  friend bool operator==(const Setup&, const Setup&) = default;
};

// The members of a step other than facts and figures. A new member needs its row in stepFields (step_reader.cpp), which
// will not compile without it; the bench then has it, and a renewal reports changes of it.
struct StepDetail {
  std::string title;                   // the act, verb first, at most 8 words; may hold {placeholders}
  std::vector<std::string> sentences;  // the file's "do": at most 15 words each
  std::string good;
  std::string trap;
  std::vector<std::string> tools;
  std::vector<Caution> cautions;
  Hands hands = Hands::Clean;
  WayUp up = WayUp::None;
  std::optional<Act> act;  // nothing: no drawing
  // Which part of that drawing each of the first sentences speaks of; nothing: of none.
  std::vector<std::optional<ActPlace>> places;
  Span work;
  std::string workSource;
  bool uninterruptible = false;
  std::string resource;       // "press", "rack" or ""
  Stage stage = Stage::None;  // the technique's, where the step states no other
  bool once = false;          // for all pieces of a job together

  friend bool operator==(const StepDetail&, const StepDetail&) = default;
};

struct Step : StepDetail {
  std::string id;
  ThingKind each = ThingKind::Once;
  Where where;  // only for things that have these properties
  std::vector<Material> materials;
  std::optional<Setup> setup;
  std::vector<StepFigure> figures;
  std::vector<Check> checks;
  std::vector<Need> needs;
  std::vector<FactPattern> makes;
  std::vector<FactPattern> ends;
  std::vector<Wait> waits;
  std::vector<std::string> asMade;  // figure patterns
  std::vector<Fault> faults;
  std::string pointer;

  friend bool operator==(const Step&, const Step&) = default;
};

// The conditions under which the technique is part of a job.
struct When {
  enum class Mode {
    Always,
    Each,    // once for each thing of `kind` that has the wanted properties
    Any,     // once, where the job has at least `least` such things
    Needed,  // only where some step needs a fact this technique makes
  };
  Mode mode = Mode::Always;
  ThingKind kind = ThingKind::Once;
  int least = 1;
  Where where;
  Circumstances circumstances;  // only for a job that is one of these, in each circumstance named

  friend bool operator==(const When&, const When&) = default;
};

// The way a technique's thing is split into parts that can each be worked in one go.
struct Repeat {
  int count = 0;       // a fixed number, or
  std::string figure;  // an area figure pattern, split so that
  double each = 0;     // no part is larger than this (mm2)
  std::string source;

  friend bool operator==(const Repeat&, const Repeat&) = default;
};

// Which steps may be worked as one act: all of them in turn for the first thing, then for the next.
struct Together {
  enum class Over {
    Each,   // for one thing alone
    Owner,  // for the things of one owner: the strips of a band, the parts of a field
    Piece,  // for all things of one of several identical pieces
    Job,    // for all things of the job
  };
  std::vector<std::string> steps;  // ids, in the order of the file
  Over over = Over::Each;
  std::string title;               // where several are worked; "" only with Each
  std::vector<std::string> alike;  // properties that must be equal
  Way way = Way::Every;            // Short: in the short way alone
  std::string pointer;

  friend bool operator==(const Together&, const Together&) = default;
};

// One thing the technique wants: a measure of the piece or the room, a property of its own thing, or that a fact is not
// made by another technique. Exactly one of the three is set.
struct Want {
  std::optional<Measure> of;
  bool isLeast = true;  // `bound` is the least, otherwise the most
  double bound = 0;     // mm, degrees Celsius or per cent
  Where where;
  std::optional<FactPattern> without;
  std::string why;  // a sentence
  std::string source;
  std::string pointer;

  friend bool operator==(const Want&, const Want&) = default;
};

// How the work of a technique can be undone, as far as that is known, for the conservator who takes the piece apart.
struct Reversal {
  std::string how;  // a sentence
  std::string source;

  friend bool operator==(const Reversal&, const Reversal&) = default;
};

// The members of a technique that apply to each of its steps. A new member needs its row in techniqueFields
// (technique_reader.cpp).
struct TechniqueDetail {
  bool ofShop = false;                   // its facts belong to the shop, not to one job
  std::optional<units::Duration> keeps;  // shelf life of the shop facts
  std::string keepsSource;
  std::optional<Reversal> reversal;  // nothing where the file does not state it

  friend bool operator==(const TechniqueDetail&, const TechniqueDetail&) = default;
};

struct Technique : TechniqueDetail {
  std::string id;
  std::string title;
  std::string role;  // empty: no alternatives
  int rank = 0;      // ties in the order of work: lower first
  When when;
  std::optional<Repeat> repeat;
  std::vector<Want> wants;
  Stage stage = Stage::None;
  std::vector<Together> together;
  std::vector<Step> steps;

  friend bool operator==(const Technique&, const Technique&) = default;
};

}  // namespace core::craft
