#include "wording/model_words.hpp"

#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "units/si_factors.hpp"
#include "wording/length_phrases.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerpole {

std::string_view name_of(SourceClass source_class) {
  return source_class == SourceClass::unstated ? say(RigPhrase::no_source_given) : word_of(source_class);
}

std::string_view name_of(Part::Role role) {
  switch (role) {
  case Part::Role::boat_fitting:
    return say(RigPhrase::boat_fitting);
  case Part::Role::fixed:
    return "fixed";
  case Part::Role::worn:
    return "worn";
  case Part::Role::adjuster:
    return "adjuster";
  }
  return {};
}

std::string_view words(Derivation derivation) {
  switch (derivation) {
  case Derivation::from_points:
    return "from points";
  case Derivation::no_number_yet:
    return "no number yet";
  case Derivation::mark_on:
    return "mark on the {}: {}";
  case Derivation::on_cord:
    return "cord {}";
  case Derivation::on_cord_at_one_knot:
    return "cord {}, 1 knot";
  case Derivation::on_cord_at_knots:
    return "cord {}, {} knots";
  case Derivation::with_mark:
    return "{}, {}";
  case Derivation::each:
    return "{}";
  case Derivation::from_seat:
    return "from the geometry of the seat";
  case Derivation::hookes_law:
    return "Hooke's law";
  case Derivation::modulus_times_area:
    return "modulus times metallic area";
  case Derivation::of_method_with_headsails:
    return "of the method, for a mast that carries the headsails";
  case Derivation::as_shop_delivers:
    return "as the shop {} delivers it";
  case Derivation::test_splice:
    return "test splice";
  case Derivation::test_splice_on:
    return "test splice of {}";
  case Derivation::test_splice_by:
    return "test splice by {}";
  case Derivation::test_splice_on_by:
    return "test splice of {} by {}";
  case Derivation::shortened_over:
    return "{}: {} to {} over a bury of {}";
  case Derivation::set_to:
    return "{}: {} set to {}";
  case Derivation::share_through_junction:
    return "{} times the load of {} through the junction";
  }
  return {};
}

std::string note_words(const Provenance& provenance) {
  return provenance.derivation.empty() ? provenance.note : say(provenance.derivation);
}

namespace {

std::string in_words(std::string_view name) {
  std::string words(name);
  std::replace(words.begin(), words.end(), '-', ' ');
  return words;
}

/// A title with a small first letter, as it stands within a sentence; what is written in capitals stays.
std::string within(std::string title) {
  if (title.size() > 1 && title[0] >= 'A' && title[0] <= 'Z' && !(title[1] >= 'A' && title[1] <= 'Z'))
    title[0] = static_cast<char>(title[0] - 'A' + 'a');
  return title;
}

/// Whether the words of a place name their mast already.
bool names_mast(const std::string& place, const Spar& mast) {
  const auto first_word = [](const std::string& words) { return words.substr(0, words.find(' ')); };
  for (const std::string& name : {spar_words(mast), in_words(mast.name)})
    for (const std::string& word : {name, first_word(name)})
      if (word != "mast" && place.find(word) != std::string::npos)
        return true;
  return false;
}

std::string_view opposite(PullDirection way) {
  switch (way) {
  case PullDirection::forward:
    return words(PullDirection::aft);
  case PullDirection::aft:
    return words(PullDirection::forward);
  case PullDirection::to_port:
    return words(PullDirection::to_starboard);
  case PullDirection::to_starboard:
    return words(PullDirection::to_port);
  }
  return {};
}

} // namespace

std::string spar_words(const Spar& spar) {
  return spar.title.empty() ? in_words(spar.name) : within(spar.title);
}

std::string titled(const Rig& rig, const Stay& stay) {
  std::string title = stay.title.empty() ? stay.base : stay.title;
  const bool shared = std::any_of(rig.stays.begin(), rig.stays.end(), [&](const Stay& other) {
    return other.base != stay.base && !other.title.empty() && other.title == stay.title;
  });
  if (shared)
    if (const Spar* mast = mast_at(rig, stay, WhichEnd::upper))
      title += ", " + spar_words(*mast);
  return title;
}

std::string place_words(const Rig& rig, const Point& point) {
  std::string place =
      point.title.empty() ? in_words(point.base.empty() ? point.name : point.base) : within(point.title);
  const auto on = mast_of(rig, point);
  const auto standing = std::count_if(rig.spars.begin(), rig.spars.end(), stands);
  // A plate in the air that hangs beside a mast is not one of it.
  if (on && standing > 1 && !names_mast(place, *on->mast) &&
      !(on->how == OnMast::near && is_plate_in_air(rig, point)))
    place += say(RigPhrase::of_the, spar_words(*on->mast));
  // One plate that lies a finger's breadth off the centreline is not one of two.
  constexpr Length beside_centreline = Length::millimetres(50.0);
  if (point.side != Side::centre && (point.twin || !(magnitude(point.position.y) < beside_centreline)))
    place += ", " + std::string(name_of(point.side));
  return place;
}

std::string where_words(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.path.size() < 2)
    return std::string(word_of(where));
  const PathStop& stop = where == WhichEnd::upper ? stay.path.front() : stay.path.back();
  return say(RigPhrase::at_the, place_words(rig, rig[stop.point]));
}

std::string_view end_word(const Rig& rig, const Stay& stay, WhichEnd where) {
  const bool upper = where == WhichEnd::upper;
  if (ends_in_plate(rig, stay, where))
    return say(RigPhrase::plate);
  if (stay.path.size() >= 2) {
    const Point& point = rig[upper ? stay.path.front().point : stay.path.back().point];
    if (mast_of(rig, point))
      return say(RigPhrase::aloft);
    if (!point.spar.empty())
      return say(RigPhrase::spar);
  }
  return upper ? say(RigPhrase::aloft) : say(RigPhrase::deck);
}

std::vector<std::string> junction_sentences(const Rig& rig) {
  std::vector<std::string> result;
  for (const JunctionBalance& balance : junction_balances(rig)) {
    std::vector<std::string> legs;
    for (const JunctionLeg& leg : balance.loaded)
      if (leg.share)
        legs.push_back(say(RigPhrase::at_deg_carries, rig[leg.stay].name,
                           format_fixed(leg.angle_radians / degree, 1), format_fixed(*leg.share, 2)));
    if (!legs.empty())
      result.push_back(say(RigPhrase::at_tension, place_words(rig, rig[balance.at]),
                           rig[balance.single].name, joined(legs, Join::comma)));
  }
  return result;
}

namespace {

std::string up_to_words(const AfterParting& after) {
  return after.up_to ? say(RigPhrase::up_to_above_waterline, format_fixed(after.up_to->metres(), 1)) : "";
}

} // namespace

std::vector<std::string> parting_words(const Rig& rig, StayId stay) {
  std::vector<std::string> result;
  for (const AfterParting& after : after_parting(rig, stay)) {
    const std::string mast = spar_words(rig.spars[after.spar]);
    if (!after.left.empty())
      result.push_back(say(RigPhrase::is_still_held_by, mast, words(after.way),
                           joined(after.left, Join::and_word), up_to_words(after)) +
                       (after.weakly ? say(RigPhrase::little_of_their_pull) : ""));
    else
      result.push_back(say(RigPhrase::is_held_by_nothing_above,
                           after.at_once ? say(RigPhrase::the) : say(RigPhrase::then_the), mast,
                           words(after.way), after.at_once ? say(RigPhrase::else_word) : "",
                           opposite(after.way)));
  }
  return result;
}

std::string force_text(const Sourced<Force>& force) {
  std::string source(name_of(force.provenance.source_class));
  if (const std::string note = note_words(force.provenance); !note.empty())
    source += ", " + note;
  return force_text(force.value) + " (" + source + ")";
}

std::string limit_text(const Limits& limits, Limit limit) {
  const StatedLimit* stated = limits.find(limit);
  if (stated != nullptr)
    return stated->value ? stated->provenance.written : say(RigPhrase::off);
  return row_of(limit).value ? std::string(row_of(limit).written()) : say(RigPhrase::none_stated);
}

DifferenceWords words_of(const Difference& difference) {
  DifferenceWords words{.by = {},
                        .of = difference.subject,
                        .what = difference.property,
                        .was = difference.was,
                        .is = difference.is};
  switch (difference.origin) {
  case Difference::Origin::layer:
    words.by = say(RigPhrase::layer, difference.origin_name);
    break;
  case Difference::Origin::sister_ship:
    words.by = say(RigPhrase::sister_ship);
    break;
  case Difference::Origin::command_line:
    words.by = say(RigPhrase::command_line);
    break;
  case Difference::Origin::shop:
    words.by = say(RigPhrase::shop, difference.origin_name);
    break;
  }
  if (difference.of_bench_cards()) {
    words.of = say(RigPhrase::bench_cards);
    if (words.is.empty())
      words.is = say(RigPhrase::millimetres);
    if (!difference.rounded_to.empty())
      words.is += say(RigPhrase::rounded_to, difference.rounded_to);
  }
  return words;
}

} // namespace sheerpole
