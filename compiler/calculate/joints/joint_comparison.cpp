#include "calculate/joints/joint_comparison.hpp"

#include "calculate/adjust/take_up.hpp"
#include "model/kind_words.hpp"
#include "units/named_size.hpp"
#include "units/thread.hpp"

#include <algorithm>
#include <string>
#include <tuple>
#include <utility>

namespace sheerpole {

void JointComparison::add(JointFinding finding, JointResult result, Remark words,
                          std::optional<Length> play) {
  joint_.checks.push_back({finding, result, std::move(words), play});
}

void JointComparison::add(JointFinding finding, bool good, Remark words, std::optional<Length> play) {
  add(finding, good ? JointResult::pass : JointResult::finding, std::move(words), play);
}

void JointComparison::missing(JointFinding finding, const End& end, EndDimensionName dimension) {
  add(finding, JointResult::not_checked,
      dimension == EndDimensionName::grip ? Remark(JointPhrase::grip_not_stated)
      : dimension == EndDimensionName::engaged
          ? Remark(JointPhrase::engaged_not_stated)
          : Remark(JointPhrase::dimension_not_stated,
                   {Words{std::string(name_of(dimension))}, Words{std::string(name_of(end.type))}}));
}

void JointComparison::switched_off(JointFinding finding, Limit limit) {
  add(finding, JointResult::not_checked,
      Remark(JointPhrase::limit_off, {Words{std::string(row_of(limit).name)}}));
}

void JointComparison::add_ratio(JointFinding finding, double ratio, Limit usual_limit, Limit least_limit,
                                Remark words) {
  const auto usual = rig_.limits.value(usual_limit);
  const auto least = rig_.limits.value(least_limit);
  if (!usual && !least) {
    switched_off(finding, usual_limit);
    return;
  }
  Remark bounds = usual && least ? Remark(JointPhrase::usual_and_least, {Decimal{*usual}, Decimal{*least}})
                  : usual        ? Remark(JointPhrase::usual, {Decimal{*usual}})
                                 : Remark(JointPhrase::least, {Decimal{*least}});
  add(finding, ratio >= usual.value_or(least.value_or(0.0)),
      Remark(JointPhrase::together, {Remarks{{std::move(words), std::move(bounds)}, Join::semicolon}}));
}

TwoDimensions JointComparison::both(std::initializer_list<JointFinding> findings, const End& one,
                                    EndDimensionName dimension, const End& other,
                                    EndDimensionName other_dimension) {
  const TwoDimensions found{one.find(dimension), other.find(other_dimension)};
  if (found)
    return found;
  for (const JointFinding finding : findings)
    if (found.one == nullptr)
      missing(finding, one, dimension);
    else
      missing(finding, other, other_dimension);
  return {};
}

OneOf one_of(EndType type) {
  return {std::string(name_of(type))};
}

std::optional<NamedSize> named_size(const EndDimension& dimension) {
  auto size = parse_named_size(dimension.text);
  return size.ok() ? std::optional(size.value()) : std::nullopt;
}

void compare_hook(JointComparison& to, const End& hook, const End& eye) {
  const TwoDimensions room = to.both({JointFinding::hook_too_small}, hook, EndDimensionName::opening, eye,
                                     EndDimensionName::thickness);
  if (!room)
    return;
  const Length play = room.first() - room.second();
  to.add(JointFinding::hook_too_small, play >= -a_hair,
         Remark(JointPhrase::eye_in_hook, {room.second(), room.first()}), play);
}

void compare_tee(JointComparison& to, const End& tee, const End& slot) {
  const TwoDimensions neck{tee.find(EndDimensionName::neck), slot.find(EndDimensionName::width)};
  const TwoDimensions bar{tee.find(EndDimensionName::head), slot.find(EndDimensionName::length)};
  const auto room = [](const TwoDimensions& one) { return one.second() - one.first(); };
  const auto too_big = [&](const TwoDimensions& one) { return one && room(one) < Length{}; };
  const auto words = [](JointPhrase phrase, const TwoDimensions& one) {
    return Remark(phrase, {one.first(), one.second()});
  };
  if (too_big(neck))
    to.add(JointFinding::tee_too_big, JointResult::finding, words(JointPhrase::neck_in_slot, neck),
           room(neck));
  else if (too_big(bar))
    to.add(JointFinding::tee_too_big, JointResult::finding, words(JointPhrase::head_in_slot, bar),
           room(bar));
  else if (to.both({JointFinding::tee_too_big}, tee, EndDimensionName::neck, slot,
                   EndDimensionName::width) &&
           to.both({JointFinding::tee_too_big}, tee, EndDimensionName::head, slot,
                   EndDimensionName::length))
    to.add(JointFinding::tee_too_big, JointResult::pass,
           Remark(JointPhrase::together,
                  {Remarks{{words(JointPhrase::neck_in_slot, neck), words(JointPhrase::head_in_slot, bar)},
                           Join::comma}}));
  const TwoDimensions held = to.both({JointFinding::tee_pulls_through}, tee, EndDimensionName::head, slot,
                                     EndDimensionName::width);
  if (!held)
    return;
  const Length hold = held.first() - held.second();
  to.add(JointFinding::tee_pulls_through, hold > Length{}, words(JointPhrase::head_behind_slot, held),
         hold);
}

namespace {

/// The diameters of thread that the softer of the two parts asks for; nothing when its limit is off.
std::optional<double> most_engaged(const JointComparison& to) {
  std::optional<double> most;
  for (const std::size_t item : {to.joint().upper, to.joint().lower}) {
    const StackItem& one = to.stay().stack[item];
    const Limit limit =
        one.kind == StackItem::Kind::part ? engagement_limit(to.rig()[one.part]) : Limit::thread_engaged;
    const auto asked = to.rig().limits.value(limit);
    if (!asked)
      return std::nullopt;
    most = std::max(*asked, most.value_or(0.0));
  }
  return most;
}

/// How far the stud is in: enough of it, and not beyond the end of the thread in the body.
void compare_engagement(JointComparison& to, const End& stud, const End& socket) {
  const EndDimension* engaged = stud.find(EndDimensionName::engaged);
  const EndDimension* designation = stud.find(EndDimensionName::thread);
  const auto thread =
      designation == nullptr ? std::nullopt : std::optional(parse_thread(designation->text));
  if (engaged == nullptr || !thread || !thread->ok()) {
    to.missing(JointFinding::stud_engaged_short, stud,
               engaged == nullptr ? EndDimensionName::engaged : EndDimensionName::thread);
  } else if (const auto diameters = most_engaged(to)) {
    const Length least = thread->value().diameter * *diameters;
    to.add(JointFinding::stud_engaged_short, engaged->length.value >= least - a_hair,
           Remark(JointPhrase::stud_in_body,
                  {engaged->length.value, Words{thread->value().designation}, least}));
  } else {
    to.switched_off(JointFinding::stud_engaged_short, Limit::thread_engaged);
  }
  if (const TwoDimensions depth = to.both({JointFinding::stud_too_long}, stud, EndDimensionName::engaged,
                                          socket, EndDimensionName::depth))
    to.add(JointFinding::stud_too_long, depth.first() <= depth.second() + a_hair,
           Remark(JointPhrase::stud_in_depth, {depth.first(), depth.second()}),
           depth.second() - depth.first());
}

} // namespace

void compare_thread(JointComparison& to, const End& stud, const End& socket) {
  const auto compare = [&](JointFinding finding, EndDimensionName dimension, JointPhrase phrase) {
    if (const TwoDimensions found = to.both({finding}, stud, dimension, socket, dimension))
      to.add(finding, found.one->text == found.other->text,
             Remark(phrase, {Words{found.one->text}, Words{found.other->text}}));
  };
  compare(JointFinding::thread_differs, EndDimensionName::thread, JointPhrase::thread_in_thread);
  compare(JointFinding::hand_differs, EndDimensionName::hand, JointPhrase::hand_in_hand);
  compare_engagement(to, stud, socket);
}

namespace {

/// A bow goes through an eye or round a pin, and a pin of its own in the joint may join what else would
/// not.
bool joined_by_more(const JointComparison& to) {
  const auto is = [&](std::size_t item, PartKind kind) {
    const StackItem& one = to.stay().stack[item];
    return one.kind == StackItem::Kind::part && to.rig()[one.part].kind == kind;
  };
  if (is(to.joint().upper, PartKind::shackle) || is(to.joint().lower, PartKind::shackle))
    return true;
  for (std::size_t i = to.joint().upper + 1; i < to.joint().lower; ++i)
    if (is(i, PartKind::pin))
      return true;
  return false;
}

/// A dead-eye bears on other holes by its lanyard, and neither of the two is one.
bool lanyard_missing(const JointComparison& to, const End& above, const End& below) {
  const auto is = [&](PartKind kind) {
    for (const std::size_t item : {to.joint().upper, to.joint().lower})
      if (const StackItem& one = to.stay().stack[item];
          one.kind == StackItem::Kind::part && to.rig()[one.part].kind == kind)
        return true;
    return false;
  };
  return above.type == EndType::holes && below.type == EndType::holes && is(PartKind::deadeye) &&
         !is(PartKind::lashing);
}

void compare_parts(JointComparison& to, const End& above, const End& below) {
  if (!above.stated() || !below.stated()) {
    to.add(JointFinding::ends, JointResult::not_checked,
           !above.stated() ? JointPhrase::end_of_upper_not_stated : JointPhrase::end_of_lower_not_stated);
    return;
  }
  const Remark words(JointPhrase::ends, {one_of(above.type), one_of(below.type)});
  const bool jaws = above.type == EndType::jaw && below.type == EndType::jaw;
  if (lanyard_missing(to, above, below)) {
    to.add(JointFinding::ends_do_not_join, JointResult::finding, words);
  } else if (ends_mate(above, below)) {
    to.add(JointFinding::ends_do_not_join, JointResult::pass, words);
    if (above.type == EndType::jaw || below.type == EndType::jaw)
      to.add(JointFinding::jaws_meet, JointResult::pass, words);
  } else if (ends_never_join(above, below) && !joined_by_more(to)) {
    // A small jaw may go inside a large one; the other pairs have no such way.
    to.add(jaws ? JointFinding::jaws_meet : JointFinding::ends_do_not_join, JointResult::finding, words);
  } else {
    to.add(JointFinding::ends, JointResult::not_checked,
           Remark(JointPhrase::ends_against, {one_of(above.type), one_of(below.type)}));
  }
  using Compare = void (*)(JointComparison&, const End&, const End&);
  constexpr std::tuple<EndType, EndType, Compare> comparisons[] = {
      {EndType::jaw, EndType::eye, compare_jaw},
      {EndType::stud, EndType::socket, compare_thread},
      {EndType::hook, EndType::eye, compare_hook},
      {EndType::tee, EndType::slot, compare_tee},
  };
  for (const auto& [one, other, compare] : comparisons)
    if (above.type == one && below.type == other)
      compare(to, above, below);
    else if (above.type == other && below.type == one)
      compare(to, below, above);
  const auto pin = pin_of(to.rig(), to.joint());
  if (!pin || !pin->own)
    return;
  compare_pin_in_jaw(to, *pin);
  for (const End* end : {&above, &below})
    if (pin->jaw == nullptr && end->type == EndType::eye)
      compare_own_pin(to, *end);
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
