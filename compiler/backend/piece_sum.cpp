#include "backend/piece_sum.hpp"

#include "base/internal_error.hpp"
#include "calculate/length/body.hpp"
#include "units/format_length.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The rows of `sum` behind a first term that stands for the whole sum before it.
SumSection section_of(const LengthSum& sum, std::size_t first, Tenths before) {
  SumSection section{sum.name, {}, before, sum.known()};
  for (std::size_t i = first; i < sum.terms.size(); ++i) {
    section.rows.push_back({&sum.terms[i], Tenths::of(sum.terms[i].amount)});
    section.total += section.rows.back().amount;
  }
  return section;
}

bool begins_with(const LengthSum& sum, const std::string& name) {
  return !sum.terms.empty() && sum.terms.front().name == name;
}

bool every_part_has_a_length(const Rig& rig, const Stay& stay) {
  return std::all_of(stay.stack.begin(), stay.stack.end(), [&](const StackItem& item) {
    return item.kind == StackItem::Kind::line || rig[item.part].role == Part::Role::boat_fitting ||
           taken_length(rig, item);
  });
}

std::string with_x(bool unknown, bool negative, bool zero, const std::string& size) {
  if (!unknown)
    return (negative ? "-" : "") + size;
  if (zero)
    return "X";
  return (negative ? "X - " : "X + ") + size;
}

} // namespace

const SumSection& PieceSum::section(std::string_view name) const {
  for (const SumSection& section : sections)
    if (section.name == name)
      return section;
  internal_error("a piece without a section of its sum");
}

PieceSum piece_sum(const Rig& rig, const DerivedStay& stay, const Piece& piece) {
  PieceSum result;
  result.unknown = piece.cut.unknown;
  result.unknown_source = piece.cut.unknown_source;
  const bool from_pins = piece.body.unknown || begins_with(piece.body, stay.pin_to_pin.name);
  Tenths total;
  if (from_pins) {
    result.sections.push_back(section_of(stay.pin_to_pin, 0, total));
    total = result.sections.back().total;
    result.body_complete = every_part_has_a_length(rig, rig[stay.stay]);
  }
  // The first term of the body is the whole pin-to-pin length, that of the cut the whole body; their rows
  // have been given already.
  result.sections.push_back(
      section_of(piece.body, begins_with(piece.body, stay.pin_to_pin.name) ? 1 : 0, total));
  total = result.sections.back().total;
  result.sections.push_back(section_of(piece.cut, begins_with(piece.cut, piece.body.name) ? 1 : 0, total));
  result.cut_complete = piece.missing.empty();
  return result;
}

Tenths printed_total(const LengthSum& sum) {
  Tenths total;
  for (const Term& term : sum.terms)
    total += Tenths::of(term.amount);
  return total;
}

std::string format_total(bool unknown, Tenths total) {
  const bool negative = total.count < 0;
  return with_x(unknown, negative, total.count == 0,
                format_tenths({negative ? -total.count : total.count}));
}

std::string format_total_feet_inches(bool unknown, Tenths total) {
  const bool negative = total.count < 0;
  const Length size = negative ? -total.length() : total.length();
  return with_x(unknown, negative, total.count == 0, format_feet_inches(size));
}

} // namespace sheerpole
