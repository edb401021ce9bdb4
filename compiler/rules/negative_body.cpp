#include "calculate/length/body.hpp"
#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// The entry that takes most: a part, or a line with a length of its own.
const StackItem* longest_entry(const Rig& rig, const Stay& stay) {
  const StackItem* longest = nullptr;
  Length most;
  for (const StackItem& item : stay.stack) {
    const auto taken = item.line_length ? std::optional(item.line_length->value) : taken_length(rig, item);
    if (taken && *taken > most) {
      most = *taken;
      longest = &item;
    }
  }
  return longest;
}

std::string label_of(const Rig& rig, const StackItem& item) {
  if (item.line_length)
    return "the longest entry: this line of " + length_text(item.line_length->value);
  return "the longest part: " + rig[item.part].name + ", " + length_text(*taken_length(rig, item));
}

} // namespace

void check_negative_body(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  // Of an unknown length it can not be said what is left.
                  if (derived_stay.pin_to_pin.unknown) {
                    of_stay.not_checked("its length is X");
                    return;
                  }
                  // The shortest body says it for all: only the line without a length of its own can come
                  // out too short.
                  const LengthSum* shortest = &derived_stay.body;
                  for (const Piece& piece : derived_stay.pieces)
                    if (piece.body.known() < shortest->known())
                      shortest = &piece.body;
                  if (shortest->known() > threshold::negligible) {
                    of_stay.pass("its body is " + length_text(shortest->known()));
                    return;
                  }
                  const Stay& stay = rig[derived_stay.stay];
                  const Length pin_to_pin = derived_stay.pin_to_pin.known();
                  Diagnostic finding =
                      diagnose("negative-body", {{"stay", name},
                                                 {"hardware", length_text(pin_to_pin - shortest->known())},
                                                 {"pin-to-pin", length_text(pin_to_pin)},
                                                 {"amount", length_text(-shortest->known())}})
                          .at(stay.place, "pin-to-pin " + length_text(pin_to_pin))
                          .about(name)
                          .build();
                  if (const StackItem* longest = longest_entry(rig, stay))
                    finding.others.push_back({longest->place, label_of(rig, *longest)});
                  of_stay.find(std::move(finding));
                });
}

} // namespace sheerpole
