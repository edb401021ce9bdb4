#include "calculate/joints/joint_comparison.hpp"

#include "units/quantity_text.hpp"

#include <string>

namespace sheerpole {

namespace {

/// One dimension of the tee that has to be no more than one of the slot.
struct Passing {
  const EndDimension* tee;
  const EndDimension* slot;
  const char* tee_words;
  const char* slot_words;

  bool known() const { return tee != nullptr && slot != nullptr; }
  Length room() const { return slot->length.value - tee->length.value; }
  std::string words() const {
    return std::string(tee_words) + " of " + length_text(tee->length.value) + " in a slot " +
           length_text(slot->length.value) + slot_words;
  }
};

} // namespace

void compare_tee(JointComparison& to, const End& tee, const End& slot) {
  const EndDimension* head = stated(tee, "head");
  const EndDimension* width = stated(slot, "width");
  const Passing neck{stated(tee, "neck"), width, "a neck", " wide"};
  const Passing bar{head, stated(slot, "length"), "a head", " long"};
  const auto too_big = [](const Passing& one) { return one.known() && one.room() < Length{}; };
  if (too_big(neck))
    to.add("tee-too-big", JointResult::finding, neck.words(), neck.room());
  else if (too_big(bar))
    to.add("tee-too-big", JointResult::finding, bar.words(), bar.room());
  else if (!neck.known())
    to.missing("tee-too-big", neck.tee == nullptr ? "the neck of the tee" : "the width of the slot");
  else if (!bar.known())
    to.missing("tee-too-big", head == nullptr ? "the head of the tee" : "the length of the slot");
  else
    to.add("tee-too-big", JointResult::pass, neck.words() + ", " + bar.words());

  if (head == nullptr || width == nullptr) {
    to.missing("tee-pulls-through", head == nullptr ? "the head of the tee" : "the width of the slot");
    return;
  }
  const Length hold = head->length.value - width->length.value;
  to.add("tee-pulls-through", JointComparison::result(hold > Length{}),
         "a head of " + length_text(head->length.value) + " behind a slot " +
             length_text(width->length.value) + " wide",
         hold);
}

} // namespace sheerpole
