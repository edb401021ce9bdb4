#include "calculate/geometry/shroud_at_mast.hpp"

#include "calculate/geometry/spar_line.hpp"
#include "calculate/strength/stay_angle.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

bool has_duty(const Stay& stay, std::string_view word) {
  return std::find(stay.duties.begin(), stay.duties.end(), word) != stay.duties.end();
}

bool begins_at_junction(const Rig& rig, const Stay& stay) {
  return !stay.stack.empty() && stay.stack.front().kind == StackItem::Kind::part &&
         rig[stay.stack.front().part].kind == "junction";
}

bool is_tip(const Rig& rig, PointId point) {
  return std::any_of(rig.spreaders.begin(), rig.spreaders.end(),
                     [&](const Spreader& spreader) { return spreader.tip == point; });
}

/// The line of the mast; without any in the file an upright one on the centreline.
struct MastLine {
  SparLine line;
  std::string words;
};

std::optional<MastLine> mast_line(const Rig& rig, const Point& top) {
  if (const auto mast = mast_of(rig, top))
    return MastLine{spar_line(*mast->mast),
                    mast->mast->name + (mast->how == OnMast::near ? ", the nearest spar" : "")};
  const bool has_mast = std::any_of(rig.spars.begin(), rig.spars.end(), stands);
  if (has_mast || !top.spar.empty() || std::abs(top.position.y.metres()) > fitting_from_mast_metres)
    return std::nullopt;
  return MastLine{{{top.position.x, Length{}, Length{}}, {0.0, 0.0, 1.0}}, "upright, no mast is stated"};
}

} // namespace

std::optional<ShroudAtMast> shroud_at_mast(const Rig& rig, const Stay& stay) {
  if (stay.side == Side::centre || stay.path.size() < 2 || has_duty(stay, "running") ||
      has_duty(stay, "temporary") || begins_at_junction(rig, stay))
    return std::nullopt;
  const PointId top = stay.path.front().point;
  const auto mast = mast_line(rig, rig[top]);
  if (!mast || is_tip(rig, top))
    return std::nullopt;
  const SpacePoint begin = place_of(rig, top);
  const SpacePoint next = place_of(rig, stay.path[1].point);
  const FromSpar begins = from_spar(mast->line, begin);
  const FromSpar goes_on = from_spar(mast->line, next);
  const bool outwards = goes_on.off > begins.off && std::abs(next.y.metres()) > std::abs(begin.y.metres());
  const bool down = goes_on.along < begins.along;
  const bool comes_back =
      from_spar(mast->line, place_of(rig, stay.path.back().point)).off.metres() <= fitting_from_mast_metres;
  if (!outwards || !down || comes_back)
    return std::nullopt;
  const SpacePoint heel = mast->line.heel;
  const SpacePoint above{heel.x + Length::metres(mast->line.along.x),
                         heel.y + Length::metres(mast->line.along.y),
                         heel.z + Length::metres(mast->line.along.z)};
  const auto angle = stay_angle(begin, next, above, heel);
  if (!angle)
    return std::nullopt;
  return ShroudAtMast{*angle, mast->words};
}

} // namespace sheerpole
