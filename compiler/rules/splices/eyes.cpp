#include "rules/check_table.hpp"
#include "rules/splices/look_at_splices.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/splice_phrases.hpp"

#include <utility>
#include <vector>

/// Spliced eyes on what they bear on.
namespace sheerpole::eyes {

namespace {

using P = SpliceCheckPhrase;

/// A remark about "hmpe-9 round thimble-16", the rope and the part before what else fills it in.
Remark of_eye(P phrase, const SplicedEnd& end, std::vector<RemarkArgument> more = {}) {
  std::vector<RemarkArgument> arguments{Words{end.rope->name}, Words{end.end.part->name}};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return {phrase, std::move(arguments)};
}

/// Each spliced eye, by what it lies round.
const void* part_of(const SplicedEnd& end) {
  return end.end.part;
}

/// What the checks on the size of an eye say of it, the mildest first: of several causes the worst alone.
enum class EyeSize { fine, below_usual, angle_wide, too_short };

EyeSize eye_size(const Rig& rig, const EyeShape& shape) {
  constexpr double rounding = 1e-9;
  const auto below = [&](Limit limit) {
    const auto bound = rig.limits.value(limit);
    return bound && shape.seats < *bound - rounding;
  };
  if (below(Limit::eye_least))
    return EyeSize::too_short;
  const auto angle = rig.limits.value(Limit::eye_angle);
  if (angle && shape.half_angle_radians > *angle + rounding)
    return EyeSize::angle_wide;
  return below(Limit::eye_usual) ? EyeSize::below_usual : EyeSize::fine;
}

/// Why the shape of an eye is not known.
Remark eye_not_known(const SplicedEnd& end) {
  const End* seat = end.end.of_type(EndType::rope_seat);
  if (seat == nullptr || seat->find(EndDimensionName::diameter) == nullptr)
    return of_eye(P::no_diameter, end);
  if (seat->find(EndDimensionName::throat) == nullptr)
    return of_eye(P::no_throat, end);
  return of_eye(P::throat_within, end);
}

/// What a check on the size of an eye goes by.
Remark size_words(const SplicedEnd& end, const EyeShape& shape, EyeSize fault) {
  if (fault == EyeSize::angle_wide)
    return of_eye(P::legs_leave, end, {Angle{shape.half_angle_radians}});
  return of_eye(P::bearing_to_throat, end, {shape.bearing_to_throat, Fixed{shape.seats, 2}, shape.seat});
}

/// What it asks for: an angle at most, or a length at least.
Argument size_asked(const Rig& rig, const EyeShape& shape, EyeSize fault) {
  if (fault == EyeSize::angle_wide)
    return {"most", angle_text(*rig.limits.value(Limit::eye_angle))};
  const Limit limit = fault == EyeSize::too_short ? Limit::eye_least : Limit::eye_usual;
  return {"bound", length_text(shape.seat * *rig.limits.value(limit))};
}

/// The checks on the size of an eye, each of one fault; of an eye with a worse one it says nothing.
template <EyeSize fault>
void check_eye_size(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_splices(
      rig, derived, report, part_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        if (end.on_pear()) {
          of_stay.pass(of_eye(P::pear_shaped, end));
          return;
        }
        const auto shape = eye_shape(end);
        if (!shape) {
          of_stay.not_checked(eye_not_known(end));
          return;
        }
        const EyeSize size = eye_size(rig, *shape);
        if (size == fault)
          of_stay.find(diagnose(report.check(), {{"stay", name},
                                                 {"words", say(rig, size_words(end, *shape, fault))},
                                                 size_asked(rig, *shape, fault)})
                           .at(stay.stack[end.item].place, said(P::spliced_here))
                           .about(name));
        else if (size < fault)
          of_stay.pass(size_words(end, *shape, fault));
      });
}

void check_eye_ways_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length apart = rig.limits.length(Limit::eye_ways_apart).value_or(Length{});
  look_at_splices(
      rig, derived, report, part_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const auto ways = eye_ways(end);
        if (!ways)
          return; // one way only, or none
        const Length difference = magnitude(ways->stated - ways->geometry);
        const Remark words =
            of_eye(ways->wrapped ? P::two_ways : P::stated_and_seat, end, {ways->stated, ways->geometry});
        if (difference < apart + threshold::negligible)
          of_stay.pass(words);
        else
          of_stay.find(diagnose("eye-ways-differ", {{"stay", name},
                                                    {"words", say(rig, words)},
                                                    {"difference", length_text(difference)},
                                                    {"most", length_text(apart)}})
                           .at(ways->place, said(ways->wrapped ? P::the_test_wrap : P::the_eye_allowance))
                           .and_at(stay.stack[end.item].place, said(P::spliced_here))
                           .about(name));
      });
}

} // namespace

const CheckTable checks{
    CheckRow{"eye-short", check_eye_size<EyeSize::too_short>, {Limit::eye_least}},
    CheckRow{"eye-below-usual", check_eye_size<EyeSize::below_usual>, {Limit::eye_usual}},
    CheckRow{"eye-angle-wide", check_eye_size<EyeSize::angle_wide>, {Limit::eye_angle}},
    CheckRow{"eye-ways-differ", check_eye_ways_differ, {Limit::eye_ways_apart}},
};

} // namespace sheerpole::eyes
