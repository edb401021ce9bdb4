#include "calculate/joints/joint_comparison.hpp"
#include "units/quantity_text.hpp"
#include "units/thread.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// How far the stud is in: enough of it, and not beyond the end of the thread in the body.
void compare_engagement(JointComparison& to, const End& stud, const End& socket) {
  const EndDimension* engaged = stated(stud, "engaged");
  const EndDimension* designation = stated(stud, "thread");
  const auto thread =
      designation == nullptr ? std::nullopt : std::optional(parse_thread(designation->text));
  if (engaged == nullptr || !thread || !thread->ok()) {
    to.missing("stud-engaged-short",
               engaged == nullptr ? "how far the stud is engaged" : "the thread of the stud");
  } else if (const auto diameters = to.rig().limits.value(Limit::thread_engaged)) {
    const Length least = thread->value().diameter * *diameters;
    to.add("stud-engaged-short", JointComparison::result(engaged->length.value >= least - a_hair),
           length_text(engaged->length.value) + " of " + thread->value().designation +
               " in the body, at least " + length_text(least));
  } else {
    to.switched_off("stud-engaged-short", Limit::thread_engaged);
  }
  const EndDimension* depth = stated(socket, "depth");
  if (engaged == nullptr || depth == nullptr)
    to.missing("stud-too-long",
               engaged == nullptr ? "how far the stud is engaged" : "the depth of the socket");
  else
    to.add("stud-too-long", JointComparison::result(engaged->length.value <= depth->length.value + a_hair),
           length_text(engaged->length.value) + " of stud in a thread " + length_text(depth->length.value) +
               " deep",
           depth->length.value - engaged->length.value);
}

} // namespace

void compare_thread(JointComparison& to, const End& stud, const End& socket) {
  const EndDimension* outside = stated(stud, "thread");
  const EndDimension* inside = stated(socket, "thread");
  if (outside == nullptr || inside == nullptr)
    to.missing("thread-differs",
               outside == nullptr ? "the thread of the stud" : "the thread of the socket");
  else
    to.add("thread-differs", JointComparison::result(outside->text == inside->text),
           outside->text + " in " + inside->text);
  const EndDimension* one = stated(stud, "hand");
  const EndDimension* other = stated(socket, "hand");
  if (one == nullptr || other == nullptr)
    to.missing("hand-differs", one == nullptr ? "the hand of the stud" : "the hand of the socket");
  else
    to.add("hand-differs", JointComparison::result(one->text == other->text),
           "a " + one->text + "-handed stud in a " + other->text + "-handed socket");
  compare_engagement(to, stud, socket);
}

} // namespace sheerpole
