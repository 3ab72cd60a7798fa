#pragma once
// The words of patterns and their meaning by kind of thing, shared by the reader's cross-checks and by the
// workflow that fills patterns in.
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/craft/technique.h"

namespace core::craft {

std::string_view name(ThingKind kind);
// Returns nothing for "once", which no file may write.
std::optional<ThingKind> thingKind(std::string_view word);
std::string_view name(Relation relation);
std::optional<Relation> relation(std::string_view word);
std::string_view name(WaitKind kind);
std::string_view name(Hands hands);
// Returns each relation once, in the order in which a message names them.
std::vector<Relation> allRelations();
std::vector<Hands> allHands();
std::string_view name(SignalWord word);

// The kind of thing that owns a thing of `kind` within a technique done for each `outer`: a strip's or
// corner's owner is its band, a part's is the technique's thing, anything else owns itself.
ThingKind ownerKind(ThingKind kind, ThingKind outer);

// Returns the kind of a technique's own thing: that of "each", otherwise the job as a whole.
ThingKind outerKind(const Technique& technique);

// Returns a fact pattern in the one form in which needs and makes can be compared without a job: "board:window.cut",
// "strip:laid", "job:art.away". `kind` is the kind of the step the pattern belongs to, `outer` that of the technique's
// own thing. Bevels are boards.
std::string normalised(const FactPattern& pattern, ThingKind kind, ThingKind outer);

// True for a literal fact of the job or the shop: its first word is one of the reserved ids that no board,
// band or line may bear ("art", "boards", "piece", "package", "size", "paste", "adhesive", "wash", ...).
bool isLiteralFact(std::string_view text);
// Returns those reserved ids.
const std::vector<std::string>& literalWords();

}  // namespace core::craft
