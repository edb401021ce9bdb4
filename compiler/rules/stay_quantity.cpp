#include "rules/stay_quantity.hpp"

namespace sheerpole {

namespace {

std::vector<Length> known(const LengthSum& sum) {
  if (sum.unknown)
    return {};
  return {sum.known()};
}

} // namespace

std::vector<Length> stay_quantity(const DerivedStay& stay, std::string_view quantity) {
  if (quantity == "pin-to-pin")
    return known(stay.pin_to_pin);
  if (quantity == "body" && stay.pieces.size() <= 1)
    return known(stay.body);
  std::vector<Length> values;
  if (quantity == "body" || quantity == "cut") {
    for (const Piece& piece : stay.pieces) {
      const LengthSum& sum = quantity == "body" ? piece.body : piece.cut;
      // A cut that lacks an input is no number to hold against another.
      if (!sum.unknown && (quantity == "body" || piece.missing.empty()))
        values.push_back(sum.known());
    }
    return values;
  }
  for (const TakeUp& adjuster : stay.adjusters) {
    if (quantity == "to-tighten")
      values.push_back(adjuster.to_tighten);
    else if (quantity == "to-slacken")
      values.push_back(adjuster.to_slacken);
    else if (quantity == "engaged" && adjuster.engaged)
      values.push_back(*adjuster.engaged);
  }
  return values;
}

} // namespace sheerpole
