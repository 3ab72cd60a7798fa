#pragma once
// A picture of a sheet of paper at its scale, and stretches of paper made of it.
#include <QColor>
#include <QImage>
#include <QRectF>
#include <QTransform>
#include <list>
#include <mutex>

#include "app/painting/light.h"

namespace app::painting {

// How the paper lies that a stretch is cut from.
struct PaperPlace {
  // From mm of the sheet, a motif's centre at the origin and y up the picture, to pixels.
  QTransform toPixels;
  double repeat = 0;  // mm along x; 0: not known
  // Where the middle of the picture stands across the strip, in mm.
  double middle = 0;

  friend bool operator==(const PaperPlace&, const PaperPlace&) = default;
};

// Usable from any thread: what was made of it once is kept.
class SheetPicture {
 public:
  // The longest side that is of any use; a larger picture only takes memory.
  static constexpr int kLongestSide = 1024;

  // Requires a picture, and that it shows more than nothing of the sheet.
  SheetPicture(const QImage& picture, double acrossInMm);

  double across() const { return m_across; }  // mm
  double down() const { return m_down; }
  QColor mean() const { return m_mean; }
  // Returns whether a repeat, or all that is shown, would be a few pixels only: then its mean stands for it.
  bool isTooFine(const PaperPlace& place) const;

  // Returns the paper that is seen in `room`, whole pixels, in that light. One repeat is cut from the middle of the
  // picture and stands at every motif's centre; a picture of less than a repeat has its mean colour between. Where no
  // repeat is known its mirror images lie beside it, so that no seam is seen that the paper does not have.
  QImage stretch(const PaperPlace& place, const QRectF& room, const Light& light) const;

 private:
  struct Kept {
    PaperPlace place;
    QRectF room;
    Light light;
    QImage image;
  };
  QImage laid(const PaperPlace& place, const QRectF& room) const;
  // The picture about as large as it will be seen, so that no pixel of it is left out where it is made smaller.
  QImage sized(double pixelsPerMm) const;

  QImage m_picture;
  double m_across;
  double m_down;
  QColor m_mean;
  mutable std::mutex m_guard;
  mutable std::list<Kept> m_kept;  // the newest first
  mutable QImage m_sized;
};

}  // namespace app::painting
