#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "rules/stack_parts.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// What lies between the bearings of one piece of rope.
struct Room {
  Length buried;   ///< both tails, with rope kept for a later length
  Length throats;  ///< from the bearings to the throats, as far as they are stated
  int splices = 0; ///< that hold by their bury
  std::size_t item = 0;
  std::string words; ///< "648 mm of long-bury and 648 mm of long-bury"
};

Room room_of(const std::vector<SplicedEnd>& ends, std::size_t line) {
  Room room;
  for (const SplicedEnd& end : ends) {
    if (end.line != line)
      continue;
    if (const auto shape = eye_shape(end))
      room.throats += shape->bearing_to_throat;
    if (!end.is_bury())
      continue;
    const Length buried =
        end.bury() + (end.end.item->spare_bury ? end.end.item->spare_bury->value : Length{});
    room.buried += buried;
    room.words += (room.splices == 0 ? "" : " and ") + length_text(buried) + " of " + end.splice->name;
    room.item = end.item;
    ++room.splices;
  }
  return room;
}

void look_at(const Stay& stay, const std::string& name, const Room& room, const Piece& piece,
             const std::string& rope, StayReport& report) {
  if (piece.body.unknown) {
    report.not_checked("the length of " + rope + " is X");
    return;
  }
  // A body that is less than nothing is said by its own finding.
  if (piece.body.known() < Length{})
    return;
  const Length between = piece.body.known() - room.throats;
  const std::string words = room.words + " in " + length_text(between) + " of " + rope +
                            (room.throats > Length{} ? " between the throats" : " between the bearings");
  if (room.buried < between + threshold::negligible)
    report.pass(words);
  else
    find_once(report,
              diagnose("burys-overlap",
                       {{"stay", name}, {"words", words}, {"over", length_text(room.buried - between)}})
                  .at(stay.stack[room.item].place, "spliced here")
                  .about(name));
}

} // namespace

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
                    const Room room = room_of(ends, i);
                    if (room.splices > 0)
                      look_at(stay, name, room, one, rig[one.material].name, of_stay);
                  }
                });
}

} // namespace sheerpole
