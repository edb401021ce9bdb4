#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/splices/look_at_splices.hpp"
#include "rules/stack_parts.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/splice_phrases.hpp"

#include <cmath>

/// Splices that hold by their bury.
namespace sheerpole::buries {

namespace {

using Common = AnyCheckPhrase;

using P = SpliceCheckPhrase;

/// The bury in diameters of its rope, to the one decimal that is printed and compared: less than that is
/// lost between the tape and the rope's real diameter.
double bury_diameters(const SplicedEnd& end) {
  return std::round(end.bury() / end.rope->diameter.value * 10.0) / 10.0;
}

/// As they are printed: one decimal at most.
Decimal in_diameters(double diameters) {
  return {diameters, 1};
}

/// "long-bury on hmpe-9"
Remark splice_name(const SplicedEnd& end) {
  return {P::splice_on, {Words{end.splice->name}, Words{end.rope->name}}};
}

/// "long-bury on hmpe-9 buries 648 mm, 72 d"
Remark bury_words(const SplicedEnd& end) {
  return {P::buries,
          {Words{end.splice->name}, Words{end.rope->name}, end.bury(), in_diameters(bury_diameters(end))}};
}

/// Each splice that holds by its bury.
const void* bury_of(const SplicedEnd& end) {
  return end.is_bury() ? end.splice : nullptr;
}

void check_bury_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double least = rig.limits.value(Limit::bury_least).value_or(0.0);
  look_at_splices(
      rig, derived, report, bury_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const double diameters = bury_diameters(end);
        const Remark words = bury_words(end);
        if (!is_below(diameters, least)) {
          of_stay.pass(words);
          return;
        }
        const Remark bound(P::diameters, {in_diameters(least)});
        auto finding =
            diagnose("bury-short", {{"stay", name}, {"words", say(rig, words)}, {"bound", say(rig, bound)}})
                .at(stay.stack[end.item].place, said(P::spliced_here))
                .about(name);
        if (end.splice->bury.provenance.place)
          finding = std::move(finding).and_at(*end.splice->bury.provenance.place, said(P::the_bury));
        of_stay.find(std::move(finding));
      });
}

void check_bury_below_usual(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double usual = rig.limits.value(Limit::bury_usual).value_or(0.0);
  const double least = rig.limits.value(Limit::bury_least).value_or(0.0);
  look_at_splices(
      rig, derived, report, bury_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const double diameters = bury_diameters(end);
        if (is_below(diameters, least))
          return; // said by the finding that it is short
        const Remark words = bury_words(end);
        if (!is_below(diameters, usual))
          of_stay.pass(words);
        else
          of_stay.find(
              diagnose("bury-below-usual", {{"stay", name},
                                            {"words", say(rig, words)},
                                            {"usual", say(rig, {P::diameters, {in_diameters(usual)}})}})
                  .at(stay.stack[end.item].place, said(P::spliced_here))
                  .about(name));
      });
}

void check_taper_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double least = rig.limits.value(Limit::taper_least).value_or(0.0);
  look_at_splices(
      rig, derived, report, bury_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const auto tapered = end.tapered();
        if (!tapered) {
          of_stay.not_checked({Common::of_not_stated, {Words{"taper-over"}, Words{end.splice->name}}});
          return;
        }
        const Remark words(P::tapered_over,
                           {Words{end.splice->name}, Words{end.rope->name}, *tapered, end.bury()});
        if (*tapered > end.bury() * least - threshold::negligible)
          of_stay.pass(words);
        else
          of_stay.find(diagnose("taper-short", {{"stay", name},
                                                {"words", say(rig, words)},
                                                {"least", length_text(end.bury() * least)},
                                                {"share", percent_text(least)}})
                           .at(stay.stack[end.item].place, said(P::spliced_here))
                           .about(name));
      });
}

/// What lies between the bearings of one piece of rope.
struct Room {
  Length buried;   ///< both tails, with rope kept for a later length
  Length throats;  ///< from the bearings to the throats, as far as they are stated
  int splices = 0; ///< that hold by their bury
  std::size_t item = 0;
  Remarks words; ///< "648 mm of long-bury and 648 mm of long-bury"
};

Room room_of(const std::vector<SplicedEnd>& ends, std::size_t line, const Piece& piece) {
  Room room;
  room.words.join = Join::and_word;
  for (const SplicedEnd& end : ends) {
    if (end.line != line)
      continue;
    if (const auto shape = eye_shape(end))
      room.throats += shape->bearing_to_throat;
    if (!end.is_bury())
      continue;
    const Length tail = buried(piece, end.end.where).total();
    room.buried += tail;
    room.words.all.push_back({P::buried_of, {tail, Words{end.splice->name}}});
    room.item = end.item;
    ++room.splices;
  }
  return room;
}

void look_at_room(const Rig& rig, const Stay& stay, const std::string& name, const Room& room,
                  const Piece& piece, const std::string& rope, StayReport& report) {
  if (piece.body.unknown) {
    report.not_checked({P::length_is_x, {Words{rope}}});
    return;
  }
  // A body that is less than nothing is said by its own finding.
  if (piece.body.known() < Length{})
    return;
  const Length between = piece.body.known() - room.throats;
  const Remark words(room.throats > Length{} ? P::between_throats : P::between_bearings,
                     {room.words, between, Words{rope}});
  if (room.buried < between + threshold::negligible)
    report.pass(words);
  else
    find_once(report, diagnose("burys-overlap", {{"stay", name},
                                                 {"words", say(rig, words)},
                                                 {"over", length_text(room.buried - between)}})
                          .at(stay.stack[room.item].place, said(P::spliced_here))
                          .about(name));
}

void check_burys_overlap(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const std::vector<SplicedEnd> ends = spliced_ends(rig, stay);
                  std::size_t piece = 0;
                  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
                    if (stay.stack[i].kind != StackItem::Kind::line)
                      continue;
                    const Piece& one = derived_stay.pieces[piece++];
                    const Room room = room_of(ends, i, one);
                    if (room.splices > 0)
                      look_at_room(rig, stay, name, room, one, rig[one.material].name, of_stay);
                  }
                });
}

void check_splice_not_locked(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_splices(
      rig, derived, report, bury_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        report_stated(
            stated_fact(end.splice->particulars, fact_names.locking), splice_name(end),
            {Common::of_not_stated, {Words{"locking"}, Words{end.splice->name}}},
            diagnose("splice-not-locked", {{"stay", name}, {"splice", say(rig, splice_name(end))}})
                .at(stay.stack[end.item].place, said(P::spliced_here))
                .about(name),
            of_stay);
      });
}

/// A tail goes into the hollow of a braid. Laid rope, a braid round a core and a double braid have none.
void check_rope_not_hollow(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_splices(
      rig, derived, report, bury_of,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const Construction& made = end.rope->construction;
        if (!made.hollow) {
          of_stay.not_checked({P::hollow_not_told, {Words{end.splice->name}, Words{end.rope->name}}});
          return;
        }
        if (*made.hollow) {
          of_stay.pass({P::hollow, {Words{end.splice->name}, Words{end.rope->name}}});
          return;
        }
        const Remark words(P::not_hollow,
                           {Words{end.splice->name}, Words{end.rope->name}, Words{made.text}});
        of_stay.find(diagnose("rope-not-hollow", {{"stay", name}, {"words", say(rig, words)}})
                         .at(stay.stack[end.item].place, said(P::spliced_here))
                         .and_at(end.rope->place, said(P::the_rope))
                         .about(name));
      });
}

} // namespace

const CheckTable checks{
    CheckRow{"bury-short", check_bury_short, {Limit::bury_least}, true},
    CheckRow{"rope-not-hollow", check_rope_not_hollow},
    CheckRow{"bury-below-usual", check_bury_below_usual, {Limit::bury_usual}},
    CheckRow{"taper-short", check_taper_short, {Limit::taper_least}},
    CheckRow{"burys-overlap", check_burys_overlap},
    CheckRow{"splice-not-locked", check_splice_not_locked},
};

} // namespace sheerpole::buries
