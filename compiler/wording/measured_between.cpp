#include "wording/model_words.hpp"
#include "wording/papers/measuring_sheet_words.hpp"

namespace sheerpole {

bool ends_in_plate(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.stack.empty())
    return false;
  const StackItem& item = where == WhichEnd::upper ? stay.stack.front() : stay.stack.back();
  return item.kind == StackItem::Kind::part && rig[item.part].kind == PartKind::junction;
}

PhraseText measured_between(const Rig& rig, const Stay& stay) {
  const bool above = ends_in_plate(rig, stay, WhichEnd::upper);
  const bool below = ends_in_plate(rig, stay, WhichEnd::lower);
  return above && below ? say(MeasuringSheetPhrase::from_middle_one_plate_to)
         : above        ? say(MeasuringSheetPhrase::from_plate_to_pin)
         : below        ? say(MeasuringSheetPhrase::from_pin_to_plate)
                        : say(MeasuringSheetPhrase::from_middle_one_pin_to);
}

} // namespace sheerpole
