#include "calculate/joints/joint_comparison.hpp"

#include "calculate/joints/joint.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "units/thread.hpp"

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>

namespace sheerpole {

void JointComparison::add(std::string slug, JointResult result, std::string words,
                          std::optional<Length> play) {
  joint_.checks.push_back({std::move(slug), result, std::move(words), play});
}

void JointComparison::missing(std::string slug, const std::string& what) {
  add(std::move(slug), JointResult::not_checked, what + " is not stated");
}

void JointComparison::switched_off(std::string slug, Limit limit) {
  add(std::move(slug), JointResult::not_checked,
      std::string(row_of(limit).name) + " is switched off in `limits`");
}

void JointComparison::add_ratio(std::string slug, double ratio, Limit usual_limit, Limit least_limit,
                                std::string words) {
  const auto usual = rig_.limits.value(usual_limit);
  const auto least = rig_.limits.value(least_limit);
  if (!usual && !least) {
    switched_off(std::move(slug), usual_limit);
    return;
  }
  words += "; ";
  if (usual)
    words += trimmed(*usual) + " are usual" + (least ? ", " : "");
  if (least)
    words += trimmed(*least) + " the least";
  add(std::move(slug), result(ratio >= usual.value_or(*least)), std::move(words));
}

std::string JointComparison::trimmed(double value) {
  return format_number(std::round(value * 100.0) / 100.0);
}

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
