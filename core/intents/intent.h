#pragma once
// The intents on a job. Touch keys, pedal and voice all end here; nothing else changes a job.
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/intents/appearance.h"
#include "core/intents/design.h"
#include "core/intents/notes.h"
#include "core/intents/stock.h"
#include "core/units/climate.h"
#include "core/units/duration.h"
#include "core/units/length.h"

namespace core::intents {

// A job file is imported: its text and those of the techniques it uses are stored by content hash.
struct TakeIn {
  std::string jobHash;
  std::string title;
  std::string reference;
  struct Technique {
    std::string id;
    std::string hash;
  };
  std::vector<Technique> techniques;
};

struct BeginStep {
  std::string step;
};

struct FinishStep {
  std::string step;
  // How many of the steps' checks were found true; a step is finished only with all of them.
  std::int64_t checked = 0;
  // The maker states that a step whose window was found closed was begun while it was open.
  bool begunInTime = false;
  // The steps worked in one act with it, in order: all are done with it, or none.
  std::vector<std::string> with = {};
};

// Takes back everything one intent did. Taking back an undo is a redo.
struct Undo {
  std::string intentId;
};

enum class Verdict { NotYet, Tacky, PastIt, Dry };
inline constexpr Verdict kVerdicts[] = {Verdict::NotYet, Verdict::Tacky, Verdict::PastIt, Verdict::Dry};

// A touch test.
struct LookAt {
  std::string wait;
  Verdict verdict = Verdict::NotYet;
  bool sure = false;  // no new finding: the maker confirms the last look, however far from what was expected
};

// This job uses a preparation of a bench that has not worked it: everything that bench has done of its technique.
struct AcceptPreparation {
  std::string step;  // one of the technique's
  std::string deviceId;
};

// The event of a wait that an alert announces.
enum class AlertClass {
  Soon,     // a tack window opens in ten minutes: wash, lay out
  Look,     // worth a look: one in five is ready
  Open,     // a tack window should be open
  Over,     // a wait without a closing should be over
  Closing,  // the act has to begin now
  Missed,   // the window has likely closed
};
inline constexpr AlertClass kAlertClasses[] = {AlertClass::Soon, AlertClass::Look,    AlertClass::Open,
                                               AlertClass::Over, AlertClass::Closing, AlertClass::Missed};

// "I have heard it": silences that alert for good; the row stays until the act is done.
struct Hear {
  std::string wait;
  AlertClass alert = AlertClass::Over;
};

// "Tell me again later": silences an alert that is due for 2 or 5 minutes.
struct Snooze {
  std::string wait;
  AlertClass alert = AlertClass::Over;
  int minutes = 5;
};

struct ReportFault {
  std::string step;
  std::string fault;
  std::string way = "";  // the way out the maker chose; "" where the fault leaves no choice
};

// Takes up the technique's remedy for a missed window.
struct MendMissed {
  std::string wait;
};

// A figure as the rule shows it, measured at a step that lets the maker measure it. A new measure replaces it.
struct EnterAsMade {
  std::string step;
  std::string figure;
  units::Length value;
  // An earlier measure that this one contradicts and that the maker considers wrong; "" for none.
  std::string overrules;
};

// The measure is dropped and the figure is computed again.
struct ForgetAsMade {
  std::string figure;
};

// Chooses which size an inner window not yet cut keeps when the opening above differs from the plan.
struct ChooseFollow {
  std::string board;
  bool keepReveal = false;  // or the cover
};

// A job is put away: off the bench, found again by searching.
struct PutAway {};
struct BringBack {};

using Intent = std::variant<TakeIn, BeginStep, FinishStep, Undo, LookAt, Hear, Snooze, ReportFault, MendMissed,
                            EnterAsMade, ForgetAsMade, ChooseFollow, AddNote, ChangeNote, RemoveNote, KeepPhotograph,
                            ChangeCaption, RemovePhotograph, LinkBatches, PutAway, BringBack, AcceptPreparation>;

// The intents below concern the shop and no single job.

// The room as read off a hygrometer, or as a sensor gave it.
struct EnterRoom {
  units::Room room;
  bool bySensor = false;
};

// The folder a sensor is read from; "" for none.
struct ChooseSensor {
  std::string folder;
};

// One setting of this bench: "units", "distance", "lamp", "way", "marking", "introduced" (core/shop/settings.h).
struct ChooseSetting {
  std::string what;
  std::string value;
};

// How long the machine was off before a boot.
struct TellOffTime {
  std::string bootId;
  units::Duration off;
};

// A piece of a sheet that is kept for later work.
struct Offcut {
  using Runs = intents::Runs;
  bool paper = false;  // or board
  units::Length width, height;
  std::optional<units::Length> thickness;  // of board; nothing: not known
  std::string material;                    // "" where not stated
  Runs fibres = Runs::Unknown;
  Runs pattern = Runs::Unknown;
  units::Length kerf;  // of the saw or knife it is cut with
};

// One sheet was cut up: for which job, from what, into which of its pieces, and which offcuts were kept.
struct CutSheet {
  std::string job;
  std::string stock;                  // the job's stock by id; "" where an offcut was cut
  std::string offcut;                 // or the offcut by id, which is gone with this
  std::map<std::string, int> pieces;  // how many of each piece of the cutting list
  std::vector<Offcut> kept;
};

// An offcut is no longer there: used for something else, spoilt, thrown away.
struct DropOffcut {
  std::string offcut;
};

// Takes back everything done by one act on sheets, offcuts, stock, batches, looks or the maker's name.
struct UndoInShop {
  std::string intentId;
};

using ShopIntent =
    std::variant<EnterRoom, ChooseSensor, ChooseSetting, TellOffTime, CutSheet, DropOffcut, UndoInShop, EnterStock,
                 CorrectStock, CountStock, MoveStock, RemoveStock, EnterBatch, UseUpBatch, NameMaker, GiveAppearance>;

// An intent with the job it concerns. Every act arrives as one of these types.
struct OfJob {
  std::string job;
  Intent intent;
};
struct OfShop {
  ShopIntent intent;
};
// An intent that begins a design names an unused id.
struct OfDesign {
  std::string design;
  DesignIntent intent;
};
using Request = std::variant<OfJob, OfShop, OfDesign>;

std::string_view name(const Intent& intent);
std::string_view name(Verdict verdict);
std::string_view name(AlertClass alert);

}  // namespace core::intents
