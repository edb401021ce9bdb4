#include "calculate/cut/eye_allowance.hpp"

#include "calculate/cut/cut_phrase.hpp"

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
  const EndDimension* diameter = seat->find(EndDimensionName::diameter);
  const EndDimension* throat = seat->find(EndDimensionName::throat);
  if (diameter == nullptr || throat == nullptr)
    return std::nullopt;
  const auto allowance = eye_allowance_from_geometry(diameter->length.value / 2.0, material.diameter.value,
                                                     throat->length.value);
  if (!allowance)
    return std::nullopt;
  Term term{
      TermKind::eye_allowance,
      *allowance,
      combine({&diameter->length.provenance, &throat->length.provenance, &material.diameter.provenance},
              Derivation::from_seat),
      end.where,
      {CutPhrase::round_seat, {diameter->length.value, throat->length.value}}};
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
