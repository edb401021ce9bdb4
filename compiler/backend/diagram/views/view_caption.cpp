#include "backend/diagram/views/view_caption.hpp"

#include "backend/diagram/views/drawn_stay.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// What the side view does with pairs.
std::string pairs_text(const Rig& rig, const ViewBlock& block) {
  const ViewFrame frame{block.kind, block.millimetres_per_metre, {}};
  bool pairs = false;
  bool apart = false;
  for (const Point& point : rig.points)
    if (point.twin) {
      pairs = true;
      apart = apart ||
              !near_each_other(frame.at(point.position), frame.at(rig[*point.twin].position), coincident);
    }
  return !pairs  ? ""
         : apart ? "Where port and starboard differ, both are drawn."
                 : "Port and starboard coincide: one line stands for both.";
}

} // namespace

ViewHeadings view_headings(ViewKind kind) {
  switch (kind) {
  case ViewKind::side:
    return {"AFT", "", "FORWARD"};
  case ViewKind::front:
    return {"PORT", "centreline", "STARBOARD"};
  case ViewKind::deck:
    return {"PORT", "centreline, bow", "STARBOARD"};
  }
  return {};
}

std::vector<std::string> view_caption(const Rig& rig, const ViewBlock& block) {
  std::vector<std::string> caption;
  switch (block.kind) {
  case ViewKind::side:
    caption = {"Side view, seen from starboard, bow to the right", pairs_text(rig, block)};
    break;
  case ViewKind::front:
    caption = {"Seen from astern, looking forward"};
    break;
  case ViewKind::deck:
    caption = {"Deck view, seen from above, bow up"};
    break;
  }
  if (block.labels.port_left_out)
    caption.emplace_back("Labels to starboard hold for port too.");
  if (block.labels.too_many)
    caption.emplace_back("Too many stays and points to name here; the strips name each stay.");
  if (block.labels.crowded)
    caption.emplace_back("Points too close together here are named in the other views.");
  caption.erase(std::remove(caption.begin(), caption.end(), std::string()), caption.end());
  return caption;
}

} // namespace sheerpole
