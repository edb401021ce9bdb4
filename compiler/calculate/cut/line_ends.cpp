#include "calculate/cut/line_ends.hpp"

#include "calculate/cut/eye_allowance.hpp"
#include "calculate/facts.hpp"
#include "calculate/physics/rope_work.hpp"
#include "model/fact_name.hpp"

namespace sheerpole {

const End* LineEnd::of_type(EndType type) const {
  const End& facing = where == WhichEnd::upper ? part->lower : part->upper;
  return facing.type == type ? &facing : part->line_end(type);
}

LineEnd line_end(const Rig& rig, const Stay& stay, std::size_t line, WhichEnd where) {
  LineEnd end{.where = where};
  const StackItem* found = nullptr;
  for (std::size_t at = line; found == nullptr;) {
    const bool at_edge = where == WhichEnd::upper ? at == 0 : at + 1 == stay.stack.size();
    if (at_edge)
      return end;
    at = where == WhichEnd::upper ? at - 1 : at + 1;
    const StackItem& next = stay.stack[at];
    if (next.kind != StackItem::Kind::part)
      return end;
    if (rig[next.part].role != Part::Role::worn) // a foil or a boot sits on the line and ends nothing
      found = &next;
  }
  const StackItem& neighbour = *found;
  end.item = &neighbour;
  end.part = &rig[neighbour.part];
  return end;
}

namespace {

/// What is stated of the seat that the eye lies on.
struct Seat {
  const EndDimension* diameter = nullptr;
  const EndDimension* throat = nullptr;
};

std::optional<Seat> seat_of(const SplicedEnd& end) {
  const End* seat = end.end.of_type(EndType::rope_seat);
  if (seat == nullptr)
    return std::nullopt;
  const Seat result{seat->find(EndDimensionName::diameter), seat->find(EndDimensionName::throat)};
  if (result.diameter == nullptr || result.throat == nullptr)
    return std::nullopt;
  return result;
}

} // namespace

bool holds_by_bury(const Splice& splice) {
  const std::string sort = fact_text(splice.particulars, fact_names.sort);
  return sort.empty() || sort == "bury";
}

bool SplicedEnd::on_pear() const {
  return fact_text(end.part->particulars, fact_names.shape) == "pear";
}

std::optional<Length> SplicedEnd::tapered() const {
  const Particular* taper = find_fact(splice->particulars, fact_names.taper_over);
  if (taper == nullptr)
    return std::nullopt;
  return RopeMeasure{taper->value.value.si, taper->value.value.dimension == dimension::rope_diameters}.at(
      rope->diameter.value);
}

std::vector<SplicedEnd> spliced_ends(const Rig& rig, const Stay& stay) {
  std::vector<SplicedEnd> result;
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    if (stay.stack[i].kind != StackItem::Kind::line)
      continue;
    const LineMaterial& line = rig[stay.stack[i].material.value_or(stay.material)];
    if (line.kind != LineMaterial::Kind::rope)
      continue;
    for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower}) {
      const LineEnd end = line_end(rig, stay, i, where);
      if (!end.bare() && end.item->splice)
        result.push_back({i, static_cast<std::size_t>(end.item - stay.stack.data()), &line, end,
                          &rig[*end.item->splice]});
    }
  }
  return result;
}

std::optional<EyeShape> eye_shape(const SplicedEnd& end) {
  const auto seat = seat_of(end);
  if (!seat)
    return std::nullopt;
  const Length diameter = seat->diameter->length.value;
  const Length throat = seat->throat->length.value;
  const auto loop = eye_loop(diameter, end.rope->diameter.value, throat);
  if (!loop || diameter <= Length{})
    return std::nullopt;
  const Length to_throat = throat + diameter / 2.0;
  return EyeShape{diameter, to_throat, to_throat / diameter, loop->half_angle_radians};
}

namespace {

std::optional<Length> allowance_by_shape(const SplicedEnd& end) {
  const auto seat = seat_of(end);
  if (!seat)
    return std::nullopt;
  // A served eye is thicker where it lies round its seat.
  const auto serving = fact_length(end.end.part->particulars, fact_names.serving);
  return eye_allowance_from_geometry(seat->diameter->length.value / 2.0,
                                     end.rope->diameter.value + (serving ? serving->value : Length{}),
                                     seat->throat->length.value);
}

} // namespace

std::optional<EyeWays> eye_ways(const SplicedEnd& end) {
  const auto& wrap = end.end.part->wrap;
  const auto& allowance = end.splice->eye_allowance;
  if (!wrap && !allowance)
    return std::nullopt;
  const Length rope = end.rope->diameter.value;
  const Length stated = wrap ? wrap->value : allowance->value.at(rope);
  std::optional<Length> shape = allowance_by_shape(end);
  const auto seat = seat_diameter(end.end);
  const auto least = seat ? least_eye_allowance(seat->value / 2.0, rope) : std::nullopt;
  const bool too_small = least && stated < *least - rope;
  // So many diameters are a rule for any seat; a length was measured round one, and this may be another.
  if (!too_small && (!shape || (!wrap && allowance->value.in_diameters)))
    return std::nullopt;
  return EyeWays{stated, wrap.has_value(),
                 wrap ? wrap->provenance.place.value_or(end.end.part->place)
                      : allowance->provenance.place.value_or(end.splice->place),
                 shape ? *shape : *least};
}

std::optional<Length> eyes_too_long(const Rig& rig, const Stay& stay) {
  std::optional<Length> sum;
  for (const SplicedEnd& end : spliced_ends(rig, stay)) {
    const auto& wrap = end.end.part->wrap;
    const auto& allowance = end.splice->eye_allowance;
    const auto shape = allowance_by_shape(end);
    // What is assumed holds its piece back by itself.
    if (shape && (wrap || allowance) &&
        (wrap ? wrap->provenance : allowance->provenance).assumptions.empty())
      sum = sum.value_or(Length{}) + (wrap ? wrap->value : allowance->value.at(end.rope->diameter.value)) -
            *shape;
  }
  return sum;
}

} // namespace sheerpole
