#pragma once
// Everything a bench makes of a record, as text.
#include <string>

#include "app/convert/content_hash.h"
#include "app/convert/text.h"
#include "app/words/words.h"
#include "core/base/text.h"
#include "core/decisions/offers.h"
#include "core/workflow/agenda.h"
#include "tests/app/workbench/bench.h"

namespace tests {

inline std::string numberText(const std::optional<core::units::Length>& length) {
  return length ? std::to_string(length->inNanometres()) : std::string("-");
}

inline std::string seenOfJob(StoredBench& bench, const std::string& job) {
  const auto* state = bench.work.job(job);
  REQUIRE(state != nullptr);
  std::string text = "job " + job + '\n' + core::jobs::dump(*state);
  text += "last " + state->lastIntent + " undo " + state->lastUndo + '\n';
  for (const auto& one : state->elsewhere) text += "elsewhere " + one.step + ' ' + one.deviceId + '\n';
  for (const auto& entry : bench.work.timeline(job, core::jobs::Order::OldestFirst)) {
    text += "told " + app::convert::fromQt(app::words::text(entry.what, core::units::UnitSystem::Millimetres)) +
            " kind " + std::to_string(static_cast<int>(entry.kind)) + " of " + entry.eventId + " step " + entry.step +
            " wait " + entry.wait + " figure " + entry.figure + " note " + entry.note + " photograph " +
            entry.photograph + ' ' + entry.hash + " back " + entry.takenBackBy + " corrected " + entry.correctedBy;
    for (const auto& batch : entry.batches) text += " batch " + std::to_string(batch.mark) + ' ' + batch.name;
    text += '\n';
  }
  for (const auto& offer : core::decisions::offers(bench.work.at(job))) {
    text += "offer " + core::base::dump(offer.label) + '\n';
  }
  for (const auto& [id, run] : state->waits) {
    const auto belief = bench.work.shop().learning.opening.of(core::workflow::kindOf(*run.wait));
    text += "learned " + id + ' ' + core::base::shortestNumber(belief.mean) + ' ' + std::to_string(belief.count) + '\n';
  }
  text += "exported " + app::convert::contentHash(bench.work.exportRecord(job)) + ' ' +
          app::convert::contentHash(bench.work.exportJob(job)) + '\n';
  return text;
}

inline std::string seenOfShop(StoredBench& bench) {
  const auto& shop = bench.work.shop();
  std::string text;
  for (const auto& room : shop.rooms) {
    text += "room " + std::to_string(room.at.utcMilliseconds) + ' ' +
            core::base::shortestNumber(room.room.temperature.inCelsius()) + ' ' +
            core::base::shortestNumber(room.room.humidity.inPercent()) + (room.bySensor ? " sensor" : " maker") + '\n';
  }
  text += "sensor " + shop.sensor + '\n';
  for (const auto& [boot, off] : shop.clockLog.toldOff) {
    text += "off " + boot + ' ' + std::to_string(off.inMilliseconds()) + '\n';
  }
  for (const auto& one : shop.onHand.offcuts) {
    text += "offcut " + one.id + ' ' + std::to_string(one.mark) + ' ' + one.piece.material + ' ' +
            std::to_string(one.piece.width.inNanometres()) + ' ' + std::to_string(one.piece.height.inNanometres()) +
            ' ' + one.job + '\n';
  }
  for (const auto& [job, cut] : shop.onHand.cut) {
    for (const auto& [id, count] : cut.pieces) text += "cut " + job + ' ' + id + ' ' + std::to_string(count) + '\n';
    for (const auto& [id, count] : cut.sheets) text += "sheets " + job + ' ' + id + ' ' + std::to_string(count) + '\n';
  }
  for (const auto& act : shop.onHand.acts) text += "act " + act.intentId + ' ' + std::to_string(act.kept) + '\n';
  for (const auto& item : shop.stock.items) {
    text += "item " + item.id + ' ' + item.entry.name + ' ' + std::to_string(item.quantity) + ' ' +
            std::to_string(item.countedUtc) + ' ' + numberText(item.entry.width) + ' ' +
            numberText(item.entry.thickness) + ' ' + item.entry.note + '\n';
  }
  for (const auto& batch : shop.stock.batches) {
    text += "batch " + batch.id + ' ' + std::to_string(batch.mark) + ' ' + batch.entry.name + ' ' +
            std::to_string(batch.entry.madeUtc) + ' ' + std::to_string(batch.usedUpUtc.value_or(0)) + '\n';
  }
  for (const auto& act : shop.stock.acts) text += "act " + act.intentId + ' ' + act.about + '\n';
  text += "marks " + std::to_string(shop.stock.lastMark) + ' ' + std::to_string(shop.onHand.lastMark) + '\n';
  text += "maker " + shop.stock.maker + ' ' + shop.stock.contact + '\n';
  const auto& settings = bench.work.settings();
  text += "settings " + std::to_string(static_cast<int>(settings.units)) + ' ' +
          std::to_string(settings.distance.inNanometres()) + (settings.lamp ? " lamp" : "") +
          (settings.introduced ? " introduced" : "") + '\n';
  return text;
}

inline std::string seenOfDesigns(StoredBench& bench) {
  std::string text;
  for (const auto* design : bench.work.designs().all()) {
    text += "design " + design->id + " from " + design->from + " change " + design->lastChange + " undo " +
            design->lastUndo + (design->putAway ? " away" : "") + (design->spoilt ? " spoilt" : "") + ' ' +
            app::convert::contentHash(design->text());
    for (const auto& job : design->jobs) text += " job " + job;
    text += '\n';
  }
  return text;
}

inline std::string seen(StoredBench& bench) {
  std::string text;
  for (const auto& entry : std::vector<app::workbench::JobEntry>(bench.work.jobs())) text += seenOfJob(bench, entry.id);
  return text + seenOfShop(bench) + seenOfDesigns(bench);
}

}  // namespace tests
