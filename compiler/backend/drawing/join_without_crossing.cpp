#include "backend/drawing/join_without_crossing.hpp"

#include <cmath>
#include <numeric>
#include <utility>

namespace sheerpole {

namespace {

double distance(PaperPoint a, PaperPoint b) {
  return std::hypot(a.x - b.x, a.y - b.y);
}

double turn(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

} // namespace

std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports) {
  std::vector<std::size_t> port_of(sites.size());
  std::iota(port_of.begin(), port_of.end(), std::size_t{0});
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t i = 0; i < sites.size(); ++i)
      for (std::size_t j = i + 1; j < sites.size(); ++j) {
        const PaperPoint a = ports[port_of[i]];
        const PaperPoint b = ports[port_of[j]];
        if (!cross(sites[i], a, sites[j], b))
          continue;
        const double now = distance(sites[i], a) + distance(sites[j], b);
        const double exchanged = distance(sites[i], b) + distance(sites[j], a);
        if (exchanged >= now - 1e-9) // rounding only: lines that cross are always longer
          continue;
        std::swap(port_of[i], port_of[j]);
        changed = true;
      }
  }
  return port_of;
}

} // namespace sheerpole
