#include "app/viewmodels/piece_pictures.h"

#include "core/sheets/grown.h"
#include "core/sheets/piece.h"

namespace app::viewmodels {
namespace {

core::sheets::Drawing faceOf(const core::design::Design& design) {
  return core::sheets::drawPiece(design, core::sheets::Side::Face);
}

PieceDrawing held(core::sheets::Drawing drawing) {
  PieceDrawing held;
  held.piece = std::make_shared<const core::sheets::Drawing>(std::move(drawing));
  return held;
}

}  // namespace

const PieceDrawing& PiecePictures::ofJob(const workbench::Workbench& workbench, const std::string& jobId) {
  const auto found = m_drawn.find(jobId);
  if (found != m_drawn.end()) return found->second;
  PieceDrawing& drawing = m_drawn[jobId];
  if (const auto* state = workbench.job(jobId)) {
    core::sheets::Drawing face = faceOf(*state->design);
    core::sheets::stand(face, core::sheets::Grown(*state));
    drawing = held(std::move(face));
  }
  return drawing;
}

const PieceDrawing& PiecePictures::ofDesign(const workbench::Workbench& workbench, const std::string& designId) {
  const auto found = m_drawn.find(designId);
  if (found != m_drawn.end()) return found->second;
  PieceDrawing& drawing = m_drawn[designId];
  const auto* design = workbench.designs().find(designId);
  const auto read = design == nullptr ? core::design::ReadDesign() : core::design::readDesign(design->text());
  if (read.design) drawing = held(faceOf(*read.design));
  return drawing;
}

}  // namespace app::viewmodels
