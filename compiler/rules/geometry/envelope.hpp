#pragma once

#include "rules/check_report.hpp"
#include "rules/geometry/envelope_bounds.hpp"
#include "rules/geometry/point_uses.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <cmath>
#include <cstddef>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole::boat_envelope {

using P = GeometryCheckPhrase;

constexpr double degrees(double radians) {
  return radians * 180.0 / std::numbers::pi;
}

/// A place in the axes of a spar, metres.
struct Local {
  double x = 0.0, y = 0.0, along = 0.0;
};
Local local(const Spar& spar, const Vector3& place);

/// Holds each point against what else is stated of the boat. What it sees is told by the check for which it
/// looks: "point-outside", or "point-unlikely".
class Envelope {
public:
  Envelope(const Rig& rig, CheckReport& report);

  void look();

private:
  enum class Stands { inside, unlikely, outside };
  struct Seen {
    const Point* point = nullptr;
    std::string name;
    bool looked = false;
    // What stands out most; of the same the first, since the rest follows from it.
    Stands how = Stands::inside;
    Remark words = {};
    std::optional<Span> other = {};
    Remark label = {};
  };

  // Where a point is: envelope_places.cpp.

  /// A mirrored point is told once, by its own name where one side is stated apart.
  bool told_by_twin(const Point& point) const;
  const Spar* mast(const Point& point) const;
  bool aloft(std::size_t index) const;
  /// On the hull or the deck: where stays end, and on no spar.
  bool on_deck(std::size_t index) const;
  /// Whether a stay that ends here comes down from a mast, or over a spreader: a bobstay may end at the
  /// waterline.
  bool held_from_aloft(const PointUses& use) const;
  /// From the mast that is nearest, forward; nothing when no mast is stated and no point aloft tells where
  /// it is.
  std::optional<double> from_mast(double x) const;
  bool high_over_sheer(const Point& point) const;
  /// A plate whose number has a slip may stand close to the mast, but not high up on it.
  bool low_over_sheer(const Point& point) const;

  void judge(Seen& seen, double value, const Bound& bound, bool least, const Remark& words,
             std::optional<Span> other, const Remark& label);
  /// Each of the two checks tells its own.
  void tell(const Seen& seen);
  std::optional<Span> place(const std::optional<Sourced<Length>>& fact) const;
  void look_at(std::size_t index);

  // envelope_on_deck.cpp

  /// A mast stands on the deck or below it.
  void look_at_step(const Spar& spar);
  void look_at_heel(const Spar& spar);
  void along_boat(Seen& seen, double off, const Bound& forward, const Bound& aft);
  void heights_on_deck(Seen& seen, bool from_aloft);
  void look_on_deck(Seen& seen, const PointUses& use);
  /// What the lead of a stay says of its lower end.
  void look_at_stay(Seen& seen, const Stay& stay);

  // envelope_on_spar.cpp

  struct MastLine {
    double height = 0.0; ///< along the mast, of the highest of its other points, metres
    double rake = 0.0; ///< how its other points lean off its stated line, forward, for each metre along it
  };
  void look_aloft(Seen& seen, const PointUses& use, bool begins);
  void look_on_spar(Seen& seen, const Spar& spar, const PointUses& use);
  /// By the other points of the mast, so that one with a slip is held against them.
  MastLine line_of(const Spar& spar, const Point& without) const;
  /// A stay that leads forward is made fast on the fore side of the mast, one that leads aft on the after
  /// side.
  void look_at_face(Seen& seen, const Spar& spar, const Stay& stay, const Local& at, double x);

  // envelope_spreaders.cpp

  struct Reach {
    double out = 0.0, aft = 0.0, up = 0.0;
    double sweep() const { return std::atan2(aft, out); }
  };
  /// Whether a stay goes over this tip and on to the deck: a strut of a diamond or a jumper points
  /// anywhere.
  bool to_deck(const PointUses& use) const;
  Reach reach(const Spreader& spreader) const;
  void look_at_tip(Seen& seen, const PointUses& use);

  const Rig& rig_;
  CheckReport& report_;
  bool errors_;
  bool lowered_ = false;
  std::vector<PointUses> uses_;
  std::optional<Sourced<Length>> overall_, beam_, sheer_, triangle_, hoist_;
};

} // namespace sheerpole::boat_envelope
