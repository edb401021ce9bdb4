#include "calculate/joints/compare_joint.hpp"

#include "calculate/joints/ends_that_join.hpp"
#include "calculate/joints/joint_comparison.hpp"

#include <string>
#include <string_view>
#include <tuple>

namespace sheerpole {

namespace {

/// "a jaw", "an eye"
std::string a(const std::string& type) {
  return (type.find_first_of("aeiou") == 0 ? "an " : "a ") + type;
}

/// A bow goes through an eye or round a pin, and a pin of its own in the joint may join what else would
/// not.
bool joined_by_more(const JointComparison& to) {
  const auto is = [&](std::size_t item, std::string_view kind) {
    const StackItem& one = to.stay().stack[item];
    return one.kind == StackItem::Kind::part && to.rig()[one.part].kind == kind;
  };
  if (is(to.joint().upper, "shackle") || is(to.joint().lower, "shackle"))
    return true;
  for (std::size_t i = to.joint().upper + 1; i < to.joint().lower; ++i)
    if (is(i, "pin"))
      return true;
  return false;
}

void compare_parts(JointComparison& to, const End& above, const End& below) {
  if (!above.stated() || !below.stated()) {
    to.add("ends", JointResult::not_checked,
           std::string(!above.stated() ? "the lower end of the upper part"
                                       : "the upper end of the lower part") +
               " is not stated");
    return;
  }
  const std::string words = a(above.type) + " and " + a(below.type);
  const bool jaws = above.type == "jaw" && below.type == "jaw";
  if (ends_mate(above, below)) {
    to.add("ends-do-not-join", JointResult::pass, words);
    if (above.type == "jaw" || below.type == "jaw")
      to.add("jaws-meet", JointResult::pass, words);
  } else if (ends_never_join(above, below) && !joined_by_more(to)) {
    // A small jaw may go inside a large one; the other pairs have no such way.
    to.add(jaws ? "jaws-meet" : "ends-do-not-join", JointResult::finding, words);
  } else {
    to.add("ends", JointResult::not_checked, a(above.type) + " against " + a(below.type));
  }

  using Compare = void (*)(JointComparison&, const End&, const End&);
  constexpr std::tuple<std::string_view, std::string_view, Compare> comparisons[] = {
      {"jaw", "eye", compare_jaw},
      {"stud", "socket", compare_thread},
      {"hook", "eye", compare_hook},
      {"tee", "slot", compare_tee},
  };
  for (const auto& [one, other, compare] : comparisons)
    if (above.type == one && below.type == other)
      compare(to, above, below);
    else if (above.type == other && below.type == one)
      compare(to, below, above);
}

} // namespace

void compare_joint(const Rig& rig, Joint& joint) {
  JointComparison to(rig, joint);
  const End* above = upper_end(rig, joint);
  const End* below = lower_end(rig, joint);
  if (above != nullptr && below != nullptr)
    compare_parts(to, *above, *below);
  else if (const End* only = above != nullptr ? above : below)
    compare_line(to, *only);
}

} // namespace sheerpole
