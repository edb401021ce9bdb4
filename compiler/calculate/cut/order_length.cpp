#include "calculate/cut/order_length.hpp"

#include "calculate/cut/eye_allowance.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/path_length.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr Length to_hold = Length::millimetres(500.0);

} // namespace

OrderLength order_length(const Rig& rig, const DerivedStay& stay, const Piece& piece) {
  OrderLength result;
  result.unknown = piece.cut.unknown;
  result.plus = piece.cut.known();
  if (!result.unknown)
    return result;
  const Stay& stated = rig[stay.stay];
  const auto estimate = fact_length(stated.particulars, fact_names.estimate);
  const auto path = path_length(rig, stated);
  const auto take = [&](EstimateBy by, Length pin_to_pin) {
    result.by = by;
    result.x = pin_to_pin - stay.pin_to_pin.known();
  };
  if (estimate)
    take(EstimateBy::statement, estimate->value);
  else if (path)
    take(EstimateBy::path, path->known());
  else if (stated.stated_pin_to_pin)
    take(EstimateBy::stated, stated.stated_pin_to_pin->value);
  return result;
}

Length greedier_end(const Piece& piece) {
  Length upper;
  Length lower;
  for (const Term& term : piece.cut.terms) {
    if (term.is_of(WhichEnd::upper))
      upper += term.amount;
    if (term.is_of(WhichEnd::lower))
      lower += term.amount;
  }
  return std::max(upper, lower);
}

std::optional<Length> rope_for_test_splice(const Rig& rig, MaterialId rope) {
  const LineMaterial& material = rig[rope];
  if (material.kind != LineMaterial::Kind::rope ||
      last_record_of(rig, RecordKind::test_splice, material.name) != nullptr)
    return std::nullopt;
  std::optional<Length> most;
  for (const Stay& stay : rig.stays)
    for (const SplicedEnd& end : spliced_ends(rig, stay)) {
      if (end.rope != &material || !end.is_bury())
        continue;
      const EyeAllowance eye = eye_allowance(material, *end.splice, end.end);
      const Length needed = end.bury() * 2.0 + (eye.term ? eye.term->amount : Length{}) + to_hold;
      most = std::max(most.value_or(needed), needed);
    }
  return most;
}

bool made_of_what_is_there(const Piece& piece) {
  return piece.in_hand && !piece.in_hand->incomplete && !piece.in_hand->longest_x &&
         !piece.in_hand->too_short();
}

} // namespace sheerpole
