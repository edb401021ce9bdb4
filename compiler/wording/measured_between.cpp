#include "calculate/geometry/spar_lines.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/measuring_sheet_words.hpp"

namespace sheerpole {

namespace {

/// A soft eye lies round a mast, and there is no pin.
bool ends_in_soft_eye(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.stack.empty())
    return false;
  const StackItem& item = where == WhichEnd::upper ? stay.stack.front() : stay.stack.back();
  return item.kind == StackItem::Kind::part && rig[item.part].kind == PartKind::soft_eye;
}

PhraseText end_of_tape(const Rig& rig, const Stay& stay, WhichEnd where) {
  return ends_in_plate(rig, stay, where)      ? say(MeasuringSheetPhrase::middle_of_plate)
         : ends_in_soft_eye(rig, stay, where) ? say(MeasuringSheetPhrase::where_the_eye_bears)
                                              : say(MeasuringSheetPhrase::middle_of_pin);
}

} // namespace

std::string measured_between(const Rig& rig, const Stay& stay) {
  const PhraseText above = end_of_tape(rig, stay, WhichEnd::upper);
  const PhraseText below = end_of_tape(rig, stay, WhichEnd::lower);
  if (above != below)
    return say(MeasuringSheetPhrase::from_to, above, below);
  return ends_in_plate(rig, stay, WhichEnd::upper)
             ? std::string(say(MeasuringSheetPhrase::from_middle_one_plate_to))
         : ends_in_soft_eye(rig, stay, WhichEnd::upper)
             ? say(MeasuringSheetPhrase::from_to, above, below)
             : std::string(say(MeasuringSheetPhrase::from_middle_one_pin_to));
}

} // namespace sheerpole
