#include "core/design/notices.h"

#include <algorithm>

#include "core/base/json.h"
#include "core/design/package_parts.h"

namespace core::design {
namespace {

using base::Message;
using base::Millimetres;

constexpr const char* kSpacer = "/package/spacer";
constexpr const char* kSpacerWidth = "/package/spacerWidth";
constexpr const char* kSupport = "/package/support";

// Paper grows and shrinks with the air; a float closer than this to its window may touch it. Common practice, no
// source.
constexpr Length kLeastAir = Length::wholeMillimetres(2);

Millimetres mm(Length length) { return {length.inMillimetres()}; }

class Gathering {
 public:
  explicit Gathering(const Job& job) : m_job(job) {}

  std::vector<base::Problem> all() {
    if (faceTouchesGlazing(m_job)) ofTouching();
    ofLip();
    ofSpacer();
    ofSupport();
    ofFloat();
    ofLeaf();
    return std::move(m_notices);
  }

 private:
  void tell(std::string pointer, Message message) {
    m_notices.push_back(noticeAt(std::move(pointer), std::move(message)));
  }

  void ofTouching() {
    const Package& package = m_job.package;
    if (package.spacer <= Length()) return tell(kSpacer, Message("design.face-touches-glazing"));
    tell(kSpacer, Message("design.spacer-within-decoration")
                      .with("spacer", mm(package.spacer))
                      .with("decoration", mm(package.decoration)));
  }

  void ofLip() {
    if (m_job.deliver != units::Deliver::Framed || hiddenAtTop(m_job.rebate) > Length()) return;
    tell("/mount/rebate/allowanceTotal", Message("design.lip-hides-nothing")
                                             .with("lip", mm(m_job.rebate.cover))
                                             .with("play", mm(m_job.rebate.allowanceTotal)));
  }

  void ofFloat() {
    if (!m_job.window.floats || m_job.window.distance >= kLeastAir) return;
    tell("/mount/window/margin",
         Message("design.float-without-air").with("air", mm(m_job.window.distance)).with("least", mm(kLeastAir)));
  }

  void ofLeaf() {
    for (std::size_t i = 0; i < m_job.leaf.size(); ++i) {
      const Leaf& leaf = m_job.leaf[i];
      const std::string place = base::pointerTo("/leaf", i);
      if (leaf.method == LeafMethod::Scattered) {
        if (leaf.coverage <= 0) tell(place + "/coverage", Message("design.leaf-covers-nothing").with("leaf", leaf.id));
        continue;
      }
      if (leaf.region != RegionKind::Bevel) continue;
      for (const Board& board : m_job.boards) {
        if (board.id != leaf.regionOf || !board.bevelColour) continue;
        tell(place + "/region", Message("design.colour-under-leaf").with("board", board.id).with("leaf", leaf.id));
      }
    }
  }

  void ofSpacer() {
    const Package& package = m_job.package;
    if (package.spacer <= Length()) {
      if (package.spacerWidth) tell(kSpacerWidth, Message("design.spacer-width-of-none"));
      return;
    }
    if (!hasSpacer(m_job)) return tell(kSpacer, Message("design.spacer-unframed"));
    if (package.glazing <= Length()) tell(kSpacer, Message("design.spacer-without-glazing"));
    const Rebate& rebate = m_job.rebate;
    const auto widest = widestHiddenSpacer(rebate);
    if (!widest) {
      return tell(kSpacerWidth, Message("design.spacer-never-hidden")
                                    .with("lip", mm(rebate.cover))
                                    .with("top", mm(std::max(Length(), hiddenAtTop(rebate))))
                                    .with("least", mm(kNarrowestSpacer)));
    }
    const Length width = package.spacerWidth.value_or(*widest);
    if (width >= rebate.cover) {
      tell(kSpacerWidth, Message("design.spacer-shows")
                             .with("spacer", mm(width))
                             .with("lip", mm(rebate.cover))
                             .with("would", mm(*widest)));
    } else if (width > hiddenAtTop(rebate)) {
      tell(kSpacerWidth, Message("design.spacer-shows-above")
                             .with("spacer", mm(width))
                             .with("lip", mm(rebate.cover))
                             .with("top", mm(hiddenAtTop(rebate)))
                             .with("would", mm(*widest)));
    }
  }

  void ofSupport() {
    const auto& stated = m_job.package.support;
    if (!m_job.window.floats) {
      if (stated > Length()) tell(kSupport, Message("design.support-of-covered"));
      return;
    }
    if (m_job.deliver == units::Deliver::Mount) return;
    const bool wanted = stated ? *stated > Length() : m_job.package.spacer > Length();
    if (!wanted || supportOf(m_job)) return;
    const Length least = std::min(m_job.artwork.sheet.width, m_job.artwork.sheet.height);
    tell(kSupport, Message("design.support-too-large").with("sheet", mm(least)).with("by", mm(2 * kBehindSheet)));
  }

  const Job& m_job;
  std::vector<base::Problem> m_notices;
};

}  // namespace

base::Problem noticeAt(std::string pointer, Message message) {
  base::Problem notice;
  notice.pointer = std::move(pointer);
  notice.message = std::move(message);
  notice.severity = base::Severity::Notice;
  return notice;
}

bool faceTouchesGlazing(const Job& job) {
  if (job.deliver != units::Deliver::Framed) return false;
  if (job.package.glazing <= Length() || job.package.spacer > std::max(Length(), job.package.decoration)) return false;
  const bool leafOnFace = std::any_of(job.leaf.begin(), job.leaf.end(),
                                      [](const Leaf& field) { return field.region != RegionKind::Bevel; });
  return leafOnFace || !job.lines.empty() || !job.washes.empty();
}

std::vector<base::Problem> noticesOf(const Job& job) { return Gathering(job).all(); }

}  // namespace core::design
