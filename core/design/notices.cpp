#include "core/design/notices.h"

#include <algorithm>

#include "core/design/package_parts.h"

namespace core::design {
namespace {

using base::Message;
using base::Millimetres;

constexpr const char* kSpacer = "/package/spacer";
constexpr const char* kSpacerWidth = "/package/spacerWidth";
constexpr const char* kSupport = "/package/support";

Millimetres mm(Length length) { return {length.inMillimetres()}; }

class Gathering {
 public:
  explicit Gathering(const Job& job) : m_job(job) {}

  std::vector<base::Problem> all() {
    if (faceTouchesGlazing(m_job)) tell(kSpacer, Message("design.face-touches-glazing"));
    ofSpacer();
    ofSupport();
    return std::move(m_notices);
  }

 private:
  void tell(const char* pointer, Message message) { m_notices.push_back(noticeAt(pointer, std::move(message))); }

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
  if (job.package.glazing <= Length() || job.package.spacer > Length()) return false;
  const bool leafOnFace = std::any_of(job.leaf.begin(), job.leaf.end(),
                                      [](const Leaf& field) { return field.region != RegionKind::Bevel; });
  return leafOnFace || !job.lines.empty() || !job.washes.empty();
}

std::vector<base::Problem> noticesOf(const Job& job) { return Gathering(job).all(); }

}  // namespace core::design
