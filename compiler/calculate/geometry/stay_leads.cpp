#include "calculate/geometry/stay_leads.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/geometry_phrases.hpp"
#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/strength/stay_directions.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

bool has_duty(const Stay& stay, std::string_view word) {
  return std::find(stay.duties.begin(), stay.duties.end(), word) != stay.duties.end();
}

bool begins_on_mast(const Rig& rig, const Stay& stay) {
  if (stay.path.size() < 2)
    return false;
  const Spar* spar = find_spar(rig, rig[stay.path.front().point].spar);
  return spar != nullptr && stands(*spar);
}

} // namespace

std::optional<StayId> forestay_of(const Rig& rig) {
  const bool stated = std::any_of(rig.stays.begin(), rig.stays.end(),
                                  [](const Stay& stay) { return has_duty(stay, "carries-sail"); });
  std::optional<StayId> result;
  Length foremost;
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const Stay& stay = rig.stays[i];
    // Where no stay is said to carry a sail, one that stands and goes down from a mast to the bow is meant.
    const bool meant =
        stated ? has_duty(stay, "carries-sail")
               : !has_duty(stay, "temporary") && !has_duty(stay, "removable") && begins_on_mast(rig, stay);
    if (stay.side != Side::centre || stay.path.size() < 2 || !meant)
      continue;
    const SpacePoint top = place_of(rig, stay.path.front().point);
    const SpacePoint foot = place_of(rig, stay.path.back().point);
    if (!(foot.x > top.x) || !(foot.z < top.z) || (result && !(foot.x > foremost)))
      continue;
    result = StayId{static_cast<std::uint32_t>(i)};
    foremost = foot.x;
  }
  return result;
}

namespace {

/// Where the line of the sail comes down: of a stay on a bridle the middle between the ends of its legs, to
/// which its line goes on.
SpacePoint foot_of_sail(const Rig& rig, StayId id) {
  const PointId foot = rig[id].path.back().point;
  std::vector<SpacePoint> ends;
  for (const JunctionBalance& balance : junction_balances(rig))
    if (balance.at == foot && balance.single == id)
      for (const StayId leg : balance.legs) {
        const Stay& other = rig[leg];
        ends.push_back(place_of(rig, other.path.front().point == foot ? other.path.back().point
                                                                      : other.path.front().point));
      }
  if (ends.empty())
    return place_of(rig, foot);
  SpacePoint middle;
  for (const SpacePoint& end : ends)
    middle = {middle.x + end.x, middle.y + end.y, middle.z + end.z};
  const double count = static_cast<double>(ends.size());
  return {middle.x / count, middle.y / count, middle.z / count};
}

} // namespace

std::optional<Foretriangle> foretriangle(const Rig& rig) {
  const auto id = forestay_of(rig);
  if (!id)
    return std::nullopt;
  const Stay& stay = rig[*id];
  const Point& pin = rig[stay.path.front().point];
  const SpacePoint top = space_point(pin.position);
  const SpacePoint foot = foot_of_sail(rig, *id);
  Foretriangle result;
  result.forestay = *id;
  result.foot = foot;
  if (const auto sheer = fact_length(rig.boat.particulars, fact_names.sheer_at_mast))
    result.height = top.z - sheer->value;
  if (const auto mast = mast_of(rig, pin)) {
    // Down along the mast from the pin to the height of the foot.
    const SpaceVector along = spar_line(*mast->mast).along;
    if (along.z > 0.1)
      result.base = foot.x - (top.x - Length::metres((top.z - foot.z).metres() * along.x / along.z));
  }
  return result;
}

namespace {

/// Far below any real offset of a plate, far above rounding.
constexpr double on_centreline_metres = 0.001;

double off_plane(SpaceVector way, SpaceVector normal) {
  const double share = std::abs(dot_product(way, normal)) / magnitude(way);
  return std::asin(std::min(share, 1.0));
}

} // namespace

std::optional<PartId> plate_of(const Rig& rig, const Stay& stay) {
  if (stay.stack.empty() || stay.stack.back().kind != StackItem::Kind::part ||
      rig[stay.stack.back().part].kind != PartKind::chainplate)
    return std::nullopt;
  return stay.stack.back().part;
}

double off_plate_plane(double x, double y, double z, double lean_radians, double y_metres) {
  // Square to the plane, outboard: the plate's top leans inboard, so this direction points upwards too.
  const double outboard = y_metres < 0.0 ? -1.0 : 1.0;
  return off_plane({x, y, z}, {0.0, outboard * std::cos(lean_radians), std::sin(lean_radians)});
}

double off_athwartships_plane(double x, double y, double z, double lean_radians) {
  // The plane holds the athwartships line and the plate's own upright, which leans forward at its top.
  return off_plane({x, y, z}, {std::cos(lean_radians), 0.0, -std::sin(lean_radians)});
}

std::optional<PlateLead> plate_lead(const Rig& rig, const Stay& stay) {
  const auto plate = plate_of(rig, stay);
  if (!plate || stay.path.size() < 2)
    return std::nullopt;
  const SpacePoint end = place_of(rig, stay.path.back().point);
  const SpacePoint before = place_of(rig, stay.path[stay.path.size() - 2].point);
  const auto pull = direction_between(end, before);
  const auto lean = fact_number(rig[*plate].particulars, fact_names.plane_lean);
  const bool athwartships = fact_text(rig[*plate].particulars, fact_names.plane) == "athwartships";
  if (!pull || (!lean && (athwartships || std::abs(end.y.metres()) > on_centreline_metres)))
    return std::nullopt;
  PlateLead result{.plate = *plate,
                   .lean_radians = lean ? lean->value : 0.0,
                   .lean_stated = lean.has_value(),
                   .athwartships = athwartships,
                   .off_radians = 0.0};
  result.off_radians =
      athwartships ? off_athwartships_plane(pull->x, pull->y, pull->z, result.lean_radians)
                   : off_plate_plane(pull->x, pull->y, pull->z, result.lean_radians, end.y.metres());
  return result;
}

namespace {

bool is_tip(const Rig& rig, PointId point) {
  return std::any_of(rig.spreaders.begin(), rig.spreaders.end(),
                     [&](const Spreader& spreader) { return spreader.tip == point; });
}

/// The line of the mast; without any in the file an upright one on the centreline.
struct MastLine {
  SparLine line;
  Remark words;
};

std::optional<MastLine> mast_line(const Rig& rig, const Point& top) {
  if (const auto mast = mast_of(rig, top))
    return MastLine{
        spar_line(*mast->mast),
        {mast->how == OnMast::near ? GeometryPhrase::against_nearest_spar : GeometryPhrase::against_spar,
         {Words{mast->mast->name}}}};
  const bool has_mast = std::any_of(rig.spars.begin(), rig.spars.end(), stands);
  if (has_mast || !top.spar.empty() || std::abs(top.position.y.metres()) > fitting_from_mast_metres)
    return std::nullopt;
  return MastLine{{{top.position.x, Length{}, Length{}}, {0.0, 0.0, 1.0}}, GeometryPhrase::against_upright};
}

} // namespace

std::optional<ShroudAtMast> shroud_at_mast(const Rig& rig, const Stay& stay) {
  if (stay.side == Side::centre || stay.path.size() < 2 || has_duty(stay, "temporary") ||
      ends_in_plate(rig, stay, WhichEnd::upper))
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
