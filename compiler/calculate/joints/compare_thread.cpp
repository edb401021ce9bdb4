#include "calculate/joints/joint_comparison.hpp"

namespace sheerpole {

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
}

} // namespace sheerpole
