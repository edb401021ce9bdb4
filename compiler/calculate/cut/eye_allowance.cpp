#include "calculate/cut/eye_allowance.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace sheerpole {

std::optional<Length> eye_perimeter(Length seat_radius, Length rope_diameter,
                                    Length seat_centre_to_throat) {
  const double r = seat_radius.metres();
  const double half = rope_diameter.metres() / 2.0;
  const double s = seat_centre_to_throat.metres();
  const double centreline_radius = r + half;
  const double to_leg = std::hypot(s, half);
  if (r < 0.0 || half < 0.0 || s <= 0.0 || to_leg < centreline_radius)
    return std::nullopt;
  const double b = std::atan2(half, s);
  const double g = std::acos(centreline_radius / to_leg);
  const double tangent = std::sqrt(to_leg * to_leg - centreline_radius * centreline_radius);
  return Length::metres(2.0 * (centreline_radius * (std::numbers::pi - b - g) + tangent));
}

std::optional<Length> eye_allowance_from_geometry(Length seat_radius, Length rope_diameter,
                                                  Length seat_centre_to_throat) {
  const auto perimeter = eye_perimeter(seat_radius, rope_diameter, seat_centre_to_throat);
  if (!perimeter)
    return std::nullopt;
  return *perimeter - (seat_radius + seat_centre_to_throat);
}

std::optional<Length> least_eye_allowance(Length seat_radius, Length rope_diameter) {
  const double r = seat_radius.metres();
  const double half = rope_diameter.metres() / 2.0;
  if (r < 0.0 || half < 0.0)
    return std::nullopt;
  const double centreline_radius = r + half;
  constexpr double leaves_at =
      std::numbers::pi / 6.0; // from the pull, where the legs leave at 60 deg to it
  const double tangent = (centreline_radius * std::sin(leaves_at) - half) / std::cos(leaves_at);
  const double at_seat = std::sqrt(centreline_radius * centreline_radius - half * half);
  const bool at_sixty = tangent > 0.0;
  const double to_throat =
      at_sixty ? centreline_radius * std::cos(leaves_at) + tangent * std::sin(leaves_at) : at_seat;
  const double turned = std::numbers::pi - (at_sixty ? leaves_at : std::atan2(half, at_seat));
  return Length::metres(2.0 * (centreline_radius * turned + std::max(tangent, 0.0)) - r - to_throat);
}

std::optional<Sourced<Length>> seat_diameter(const LineEnd& end) {
  if (const End* seat = end.of_type(EndType::rope_seat))
    if (const EndDimension* stated = seat->find(EndDimensionName::diameter))
      return stated->length;
  auto girth = fact_length(end.part->particulars, fact_names.girth);
  if (girth)
    girth->value = girth->value / std::numbers::pi;
  return girth;
}

namespace {

struct EyeWay {
  CutPhrase gives_more;
  CutPhrase gives_less;
  Term term;
};

std::optional<Term> from_geometry(const LineMaterial& material, const LineEnd& end) {
  const End* seat = end.of_type(EndType::rope_seat);
  if (seat == nullptr)
    return std::nullopt;
  const std::optional<Sourced<Length>> diameter = seat_diameter(end);
  const EndDimension* throat = seat->find(EndDimensionName::throat);
  if (!diameter || throat == nullptr)
    return std::nullopt;
  // A served eye is thicker where it lies round its seat, so its middle runs farther out.
  const auto serving = fact_length(end.part->particulars, fact_names.serving);
  const Length rope = material.diameter.value + (serving ? serving->value : Length{});
  const auto allowance = eye_allowance_from_geometry(diameter->value / 2.0, rope, throat->length.value);
  if (!allowance)
    return std::nullopt;
  std::vector<const Provenance*> sources{&diameter->provenance, &throat->length.provenance,
                                         &material.diameter.provenance};
  if (serving)
    sources.push_back(&serving->provenance);
  Term term{TermKind::eye_allowance,
            *allowance,
            combine(sources, Derivation::from_seat),
            end.where,
            {CutPhrase::round_seat, {diameter->value, throat->length.value}}};
  term.provenance.source_class = SourceClass::computed;
  return term;
}

Remark compared(const EyeWay& other, Length taken) {
  const Length difference = other.term.amount - taken;
  return {difference < Length{} ? other.gives_less : other.gives_more,
          {other.term.amount, magnitude(difference)}};
}

} // namespace

EyeAllowance eye_allowance(const LineMaterial& material, const Splice& splice, const LineEnd& end) {
  std::vector<EyeWay> ways;
  if (end.part->wrap)
    ways.push_back({CutPhrase::wrap_gives_more,
                    CutPhrase::wrap_gives_less,
                    {TermKind::eye_allowance, end.part->wrap->value, end.part->wrap->provenance, end.where,
                     CutPhrase::by_test_wrap}});
  if (splice.eye_allowance)
    ways.push_back(
        {CutPhrase::splice_gives_more, CutPhrase::splice_gives_less,
         rope_measure_term(TermKind::eye_allowance, end.where, *splice.eye_allowance, material)});
  if (auto term = from_geometry(material, end))
    ways.push_back({CutPhrase::seat_gives_more, CutPhrase::seat_gives_less, std::move(*term)});

  EyeAllowance result;
  if (ways.empty())
    return result;
  for (std::size_t i = 1; i < ways.size(); ++i)
    result.notes.push_back(compared(ways[i], ways.front().term.amount));
  result.term = std::move(ways.front().term);
  return result;
}

} // namespace sheerpole
