#include "core/sheets/care_layers.h"

#include "core/base/text.h"

namespace core::sheets {
namespace {

using base::Message;

class Layers {
 public:
  explicit Layers(const CareWriter& write) : m_write(write), m_job(write.job()) {}

  CareSection run() {
    const design::Package& package = m_job.package;
    // What the piece is delivered without is no part of it.
    const bool framed = m_job.deliver == units::Deliver::Framed;
    const bool attached = m_job.deliver != units::Deliver::Mount;
    if (framed) part(Message("care.layer-glazing"), package.glazing, "/package/glazing");
    if (framed) part(Message("care.layer-spacer"), package.spacer, "/package/spacer");
    for (std::size_t i = 0; i < m_job.boards.size(); ++i) {
      if (i == 0) onTheFace();
      board(m_job.boards[i], i);
    }
    if (attached) {
      add(Message("care.layer-work"), {m_write.length(m_job.artwork.thickness)}, m_write.knownAt("/artwork/thickness"));
      part(Message("care.layer-hinge"), package.hinge, "/package/hinge");
      part(Message("care.layer-back-mount"), package.backMount, "/package/backMount");
    }
    if (framed) {
      part(Message("care.layer-backing"), package.backing, "/package/backing");
      part(Message("care.layer-seal"), package.seal, "/package/seal");
      m_section.lines.push_back(m_write.figure(Message("care.package-depth"), "package.depth"));
    }
    return std::move(m_section);
  }

 private:
  void add(Message label, std::vector<Message> values, CareKnown known) {
    m_section.lines.push_back({std::move(label), std::move(values), known, ""});
  }

  // A part of no thickness is not there.
  void part(Message label, units::Length thickness, const std::string& pointer) {
    if (thickness > units::Length()) add(std::move(label), {m_write.length(thickness)}, m_write.knownAt(pointer));
  }

  // The layers on the outermost board, from the top: leaf, lines, washes, paper.
  void onTheFace() {
    for (const design::Leaf& leaf : m_job.leaf) {
      const Message method =
          leaf.method == design::LeafMethod::Laid ? Message("care.leaf-laid") : Message("care.leaf-scattered");
      add(Message("care.layer-leaf").with("id", leaf.id), {method, size(leaf.size)}, CareKnown::Entered);
    }
    for (const design::Line& line : m_job.lines) {
      add(Message("care.layer-line").with("id", line.id), {CareWriter::text(line.colour), m_write.length(line.width)},
          CareKnown::Entered);
    }
    for (const design::Wash& wash : m_job.washes) {
      add(Message("care.layer-wash").with("id", wash.id), {CareWriter::text(wash.colour)}, CareKnown::Entered);
    }
    for (const design::Band& band : m_job.bands) {
      add(Message("care.layer-band").with("id", band.id), {CareWriter::text(band.paper), m_write.length(band.width)},
          CareKnown::Entered);
    }
    for (const design::Spandrel& spandrel : m_job.spandrels) {
      add(Message("care.layer-spandrel").with("id", spandrel.id), {CareWriter::text(spandrel.paper)},
          CareKnown::Entered);
    }
  }

  static Message size(design::SizeKind kind) {
    switch (kind) {
      case design::SizeKind::MethylCellulose: return Message("care.size-cellulose");
      case design::SizeKind::Starch: return Message("care.size-starch");
      case design::SizeKind::Water: return Message("care.size-water");
      case design::SizeKind::Oil: return Message("care.size-oil");
    }
    return {};
  }

  void board(const design::Board& board, std::size_t index) {
    std::vector<Message> values = {m_write.length(board.thickness)};
    values.push_back(board.material.empty() ? Message("care.material-not-recorded") : CareWriter::text(board.material));
    if (board.bevelColour) values.push_back(Message("care.bevel-coloured").with("colour", *board.bevelColour));
    add(Message("care.layer-board").with("id", board.id), std::move(values), CareKnown::Entered);
    const std::string figure = "board." + board.id + ".sight.";
    m_section.lines.push_back(m_write.figure(Message("care.sight-width").with("id", board.id), figure + "width"));
    m_section.lines.push_back(m_write.figure(Message("care.sight-height").with("id", board.id), figure + "height"));
    if (index > 0)
      m_section.lines.push_back(
          m_write.figure(Message("care.reveal").with("id", board.id), "board." + board.id + ".reveal"));
  }

  const CareWriter& m_write;
  const design::Job& m_job;
  CareSection m_section{"layers", Message("care.section-layers"), {}};
};

}  // namespace

CareSection layerSection(const CareWriter& write) { return Layers(write).run(); }

}  // namespace core::sheets
