#pragma once
// The pieces of several jobs and designs as they have grown, each drawn when it is first shown.
#include <map>
#include <string>

#include "app/viewmodels/piece_drawing.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

class PiecePictures {
 public:
  // Returns no drawing where there is no such job or it cannot be opened.
  const PieceDrawing& ofJob(const workbench::Workbench& workbench, const std::string& jobId);
  // Of a design, whose every part is as it will be.
  const PieceDrawing& ofDesign(const workbench::Workbench& workbench, const std::string& designId);
  // It has changed, and is drawn again.
  void forget(const std::string& id) { m_drawn.erase(id); }

 private:
  std::map<std::string, PieceDrawing> m_drawn;
};

}  // namespace app::viewmodels
