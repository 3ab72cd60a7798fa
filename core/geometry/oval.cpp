// The ellipse and its parallel curves. With s(t) = |(a sin t, b cos t)| the unit normal is (b cos t, a sin t) / s and
// the curvature a b / s^3, so a point of the parallel curve moves (1 + out a b / s^3) times as fast as the ellipse's.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/geometry/segment.h"

namespace core::geometry::oval {
namespace {

// Gauss-Legendre on [-1, 1] with ten points (positive half): Abramowitz and Stegun, Handbook of Mathematical
// Functions, table 25.4.
constexpr std::array<double, 5> kNodes = {0.148874338981631211, 0.433395394129247191, 0.679409568299024406,
                                          0.865063366688984511, 0.973906528517171720};
constexpr std::array<double, 5> kWeights = {0.295524224714752870, 0.269266719309996355, 0.219086362515982044,
                                            0.149451349150580593, 0.066671344308688138};
// Steps of the quadrature: short enough for an ellipse twenty times as long as wide.
constexpr double kStep = std::numbers::pi / 48;

// The ellipse's own rate of travel.
double speedOf(const OvalArc& o, double cosine, double sine) {
  return geometry::length({o.semiX * sine, o.semiY * cosine});
}

template <typename Rate>
double integral(double t0, double t1, Rate rate) {
  const int steps = std::max(1, static_cast<int>(std::ceil(std::fabs(t1 - t0) / kStep)));
  const double half = (t1 - t0) / steps / 2;
  double sum = 0;
  for (int i = 0; i < steps; ++i) {
    const double middle = t0 + (2 * i + 1) * half;
    for (std::size_t k = 0; k < kNodes.size(); ++k) {
      sum += kWeights[k] * (rate(middle - half * kNodes[k]) + rate(middle + half * kNodes[k]));
    }
  }
  return sum * half;
}

}  // namespace

Point pointAt(const OvalArc& o, double t) {
  const double cosine = std::cos(t);
  const double sine = std::sin(t);
  const double s = speedOf(o, cosine, sine);
  return {o.centre.x + cosine * (o.semiX + o.out * o.semiY / s), o.centre.y + sine * (o.semiY + o.out * o.semiX / s)};
}

Point rateAt(const OvalArc& o, double t) {
  const double cosine = std::cos(t);
  const double sine = std::sin(t);
  const double s = speedOf(o, cosine, sine);
  const double grown = 1 + o.out * o.semiX * o.semiY / (s * s * s);
  return {-o.semiX * sine * grown, o.semiY * cosine * grown};
}

double integralXdY(const OvalArc& o, double t0, double t1) {
  return integral(t0, t1, [&](double t) {
    // x and the rate of y at once.
    const double cosine = std::cos(t);
    const double s = speedOf(o, cosine, std::sin(t));
    const double x = cosine * (o.semiX + o.out * o.semiY / s);
    return x * o.semiY * cosine * (1 + o.out * o.semiX * o.semiY / (s * s * s));
  });
}

double length(const OvalArc& o, double t0, double t1) {
  return integral(t0, t1, [&](double t) { return geometry::length(rateAt(o, t)); });
}

double parameterAtY(const OvalArc& o, double y, double low, double high) {
  const bool rising = pointAt(o, high).y > pointAt(o, low).y;
  double t = (low + high) / 2;
  // By the tangent; halving wherever that would leave the bracket, so that nothing can run off.
  for (int i = 0; i < 80; ++i) {
    const double off = pointAt(o, t).y - y;
    if (off == 0) return t;
    ((off < 0) == rising ? low : high) = t;
    double next = t - off / rateAt(o, t).y;
    if (!(next > low && next < high)) next = (low + high) / 2;
    const double step = std::fabs(next - t);
    t = next;
    if (step <= 1e-15) break;
  }
  return t;
}

double perimeter(double semiX, double semiY) {
  // E(m) = K(m) (1 - sum 2^(n-1) c_n^2), K(m) = pi / (2 agm): Abramowitz and Stegun, 17.6.
  double a = std::max(semiX, semiY);
  double b = std::min(semiX, semiY);
  const double longer = a;
  double sum = (a * a - b * b) / 2;
  double power = 0.5;
  while (std::fabs(a - b) > 1e-16 * a) {
    const double c = (a - b) / 2;
    const double mean = (a + b) / 2;
    const double geometric = std::sqrt(a * b);
    if (mean == a || geometric == b) break;
    a = mean;
    b = geometric;
    power *= 2;
    sum += power * c * c;
  }
  const double k = std::numbers::pi / (2 * ((a + b) / 2));
  // c_n above are of (longer, shorter), not of (1, k'): the sum carries the square of the longer.
  return 4 * k * (longer * longer - sum);
}

double leastCurvatureRadius(double semiX, double semiY) {
  const double longer = std::max(semiX, semiY);
  const double shorter = std::min(semiX, semiY);
  return shorter * shorter / longer;
}

}  // namespace core::geometry::oval
