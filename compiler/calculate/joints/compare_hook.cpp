#include "calculate/joints/joint_comparison.hpp"

#include "units/quantity_text.hpp"

namespace sheerpole {

void compare_hook(JointComparison& to, const End& hook, const End& eye) {
  const EndDimension* opening = stated(hook, "opening");
  const EndDimension* thickness = stated(eye, "thickness");
  if (opening == nullptr || thickness == nullptr) {
    to.missing("hook-too-small",
               opening == nullptr ? "the opening of the hook" : "the thickness of the eye");
    return;
  }
  const Length room = opening->length.value - thickness->length.value;
  to.add("hook-too-small", JointComparison::result(room >= -a_hair),
         "eye of " + length_text(thickness->length.value) + " in a hook open " +
             length_text(opening->length.value),
         room);
}

} // namespace sheerpole
