#pragma once
// Computes how much longer, or less long, a thing takes to dry in this room than in the room of its stated time.
#include "core/base/message.h"
#include "core/base/result.h"
#include "core/waits/room.h"

namespace core::waits {

enum class DryingModel {
  None,         // the room makes no measurable difference
  Evaporation,  // water must leave into the air
  Oxidation,    // the film takes up oxygen: oils, oil varnishes, oil size
};

// Time in this room / time in the reference room. least <= likely <= most: the uncertainty of the model itself.
struct Factor {
  double least = 1;
  double likely = 1;
  double most = 1;

  friend bool operator==(const Factor&, const Factor&) = default;
};

// Evaporation: the flux into the air is proportional to a difference of vapour pressures. A thin film on a thing that
// stays at the room's temperature has the whole deficit, f = deficit(reference) / deficit(room); a thick wet film on a
// light insulator cools to the wet bulb, g = the same with the wet bulb's deficits. The truth is between the two:
// likely is sqrt(f g), least and most are the two. Still air; the falling rate at the end of a thick film's drying is
// not modelled. Source: the usual laws of evaporation (mass transfer with equal coefficients) on ASHRAE's
// psychrometrics.
//
// Oxidation: Arrhenius, exp(E/R (1/T - 1/T reference)), with E = 70 kJ/mol, and 50 and 90 for four in five. Source:
// Ulkowski, Musialik and Litwinienko 2005 (linolenic acid 66 +- 4, lecithin 98 +- 6 kJ/mol); driers lower it, so the
// value and its span are our judgement.
//
// Both are refused where they would be a guess, whichever of the two rooms is meant: room.too-cold under 8 degrees
// Celsius (celsius), room.too-warm over 38 (celsius); for evaporation room.too-dry under 20 % (percent), room.too-damp
// over 85 % or where the deficit is under 200 Pa (percent). The limits themselves are within. Nothing is predicted
// then; only the touch test decides.
base::Result<Factor, base::Message> dryingFactor(DryingModel model, const Room& room, const Room& reference);

// Returns the room changed as little as brings it within the limits of the model, so that dryingFactor never refuses
// it; a room that is within is returned unchanged. Serves to time the first look where nothing is predicted.
Room nearestWithin(DryingModel model, const Room& room);

}  // namespace core::waits
