#include "wording/strength_words.hpp"

#include "base/internal_error.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace sheerpole {

std::string_view words(StrengthPhrase phrase) {
  switch (phrase) {
  case StrengthPhrase::named:
    return "{}";
  case StrengthPhrase::splice_aloft:
    return "{}, {} aloft";
  case StrengthPhrase::splice_below:
    return "{}, {} below";
  case StrengthPhrase::end_aloft:
    return "{}, its end aloft";
  case StrengthPhrase::end_below:
    return "{}, its end below";
  case StrengthPhrase::line_aloft:
    return "{} aloft";
  case StrengthPhrase::line_below:
    return "{} below";
  case StrengthPhrase::cord_of:
    return "cord of {}";
  case StrengthPhrase::pin_of:
    return "pin of {}";
  case StrengthPhrase::hole_of:
    return "hole of {}";
  case StrengthPhrase::jaw_of:
    return "the jaw of {}";
  case StrengthPhrase::jaw_at:
    return "the jaw at {}";
  case StrengthPhrase::the_limits:
    return "the limits";
  case StrengthPhrase::as_stated:
    return "as stated";
  case StrengthPhrase::as_stated_in_double_shear:
    return "as stated, in double shear";
  case StrengthPhrase::double_shear:
    return "double shear, 2 x pi/4 x ({})^2 x {} MPa";
  case StrengthPhrase::splice_share:
    return "{} x {}, efficiency of {}";
  case StrengthPhrase::lashing_sum:
    return "{} x {} x {} of {} x {} in the knot";
  case StrengthPhrase::one_pass:
    return "{} pass";
  case StrengthPhrase::several_passes:
    return "{} passes";
  case StrengthPhrase::one_leg:
    return "{} leg";
  case StrengthPhrase::several_legs:
    return "{} legs";
  case StrengthPhrase::bearing_sum:
    return "{} x {} x {} MPa";
  case StrengthPhrase::break_load:
    return "break-load";
  case StrengthPhrase::splice:
    return "splice";
  case StrengthPhrase::efficiency:
    return "efficiency";
  case StrengthPhrase::cord:
    return "cord";
  case StrengthPhrase::passes:
    return "passes";
  case StrengthPhrase::knot_factor:
    return "knot-factor";
  case StrengthPhrase::lashing_legs:
    return "lashing-legs";
  case StrengthPhrase::pin_strength:
    return "pin-stress or pin-break-load";
  case StrengthPhrase::pin:
    return "pin";
  case StrengthPhrase::bearing_stress:
    return "bearing-stress";
  case StrengthPhrase::thickness:
    return "thickness";
  case StrengthPhrase::not_stated:
    return "{} is not stated";
  case StrengthPhrase::stiffness_not_stated:
    return "stiffness of {} is not stated";
  case StrengthPhrase::length_unknown:
    return "the length is unknown";
  case StrengthPhrase::no_length_of_line:
    return "there is no length of line";
  case StrengthPhrase::cold_loss_sum:
    return "{} x EA {} / {}";
  case StrengthPhrase::published_share:
    return "F. S. Kinney, Skene's Elements of Yacht Design, as worked in B. Toss, The Complete Rigger's "
           "Apprentice, fig. 5-25";
  case StrengthPhrase::published_equilibrium:
    return "statics of the joints in a plane across the boat, exact for what it assumes";
  case StrengthPhrase::height_above_waterline:
    return "height of {} above the waterline";
  case StrengthPhrase::out_to:
    return "from the mast out to {}";
  case StrengthPhrase::above:
    return "{} above {}";
  case StrengthPhrase::of_boat_at:
    return "of the boat, at {} deg";
  case StrengthPhrase::of_boat_at_no_angle:
    return "of the boat, at an angle that is not stated";
  case StrengthPhrase::from_middle_to:
    return "from the middle of the boat to {}";
  case StrengthPhrase::boat_moment_at_other_angle:
    return "righting-moment is not stated; that of the boat is at {} deg, and the method asks for 30 deg";
  case StrengthPhrase::boat_moment_at_no_angle:
    return "righting-moment is not stated; that of the boat is at an angle that is not stated, and the "
           "method "
           "asks for 30 deg";
  case StrengthPhrase::no_half_beam:
    return "half-beam is not stated, and there is no path that ends at a chainplate";
  case StrengthPhrase::not_above_waterline:
    return "{} is not above the waterline";
  case StrengthPhrase::chainplate_in_middle:
    return "the chainplate is in the middle of the boat";
  case StrengthPhrase::line_would_push:
    return "a line would have to push, or does not run downwards: look at the points of its path";
  case StrengthPhrase::on_centreline:
    return "a stay on the centreline holds nothing sideways";
  case StrengthPhrase::no_path:
    return "there is no path through points";
  case StrengthPhrase::chainplate_not_outboard:
    return "its chainplate is not outboard of the mast";
  case StrengthPhrase::leads_fore_or_aft:
    return "from {} to {} it leads {} fore or aft; the method holds in a plane across the boat";
  case StrengthPhrase::not_a_tip:
    return "{} of its path is not the tip of a spreader";
  case StrengthPhrase::spreader_swept:
    return "{} is swept by {}; the method holds for spreaders in line with the mast";
  case StrengthPhrase::off_the_line:
    return "{} is {} from the middle and {} {}; the method needs all on one line up the mast";
  case StrengthPhrase::no_diagonal:
    return "no shroud leads from the mast at {} to {}";
  case StrengthPhrase::diagonal_fore_or_aft:
    return "{} leads {} fore or aft; the method holds in a plane across the boat";
  case StrengthPhrase::diagonal_to_other_tip:
    return "{} leads to {} and not to {}";
  case StrengthPhrase::diagonal_to_other_plate:
    return "{} leads to {}, which is not abreast of {}; the method takes all to one chainplate";
  case StrengthPhrase::begins_higher:
    return "{} begins higher up; the side force is taken at the top of the uppermost shroud";
  case StrengthPhrase::total_across:
    return "total across the boat";
  case StrengthPhrase::total_across_sum:
    return "load-factor x righting-moment / half-beam";
  case StrengthPhrase::load_of:
    return "load of {}";
  case StrengthPhrase::load_sum:
    return "share x total";
  case StrengthPhrase::break_load_asked:
    return "break load asked for";
  case StrengthPhrase::break_load_sum:
    return "break-factor x load";
  case StrengthPhrase::side_force_at:
    return "side force at {}";
  case StrengthPhrase::side_force_sum:
    return "righting-moment / height above the waterline";
  case StrengthPhrase::compression_of:
    return "compression of {}";
  case StrengthPhrase::lines_from_to:
    return "lines from {} to {}";
  case StrengthPhrase::from_upright:
    return "{} deg from upright";
  case StrengthPhrase::diagonal_from_to:
    return "{} from {} to {}";
  case StrengthPhrase::to_the_mast:
    return "{} deg to the mast";
  case StrengthPhrase::compression_below:
    return "compression of the mast below {}";
  case StrengthPhrase::side_force_alone:
    return "of the side force alone";
  case StrengthPhrase::pull_on:
    return "pull of all lines on {}";
  case StrengthPhrase::upwards:
    return "upwards";
  case StrengthPhrase::moment:
    return "moment of the side force";
  case StrengthPhrase::about_height:
    return "about the height of {}";
  case StrengthPhrase::panel:
    return "{} to {}";
  case StrengthPhrase::partners:
    return "partners";
  case StrengthPhrase::heel:
    return "heel";
  case StrengthPhrase::taken_for_granted:
    return "no pretension, the leeward side slack, joints that turn freely, lines that "
           "do not slide on the tips; the whole force at the top: with a reefed mainsail more of it bears "
           "on "
           "the lower panels and shrouds, which is not worked out; stays, halyards and sheets press the "
           "mast "
           "besides";
  case StrengthPhrase::lengths_across:
    return "lengths across are from where the shrouds are made fast, {} from the middle of the mast";
  case StrengthPhrase::not_used:
    return "stated in the load-screening of {} and not used by this method: {}";
  }
  internal_error("a phrase of strength that has no words");
}

namespace {

std::string of_words(const Rig& rig, const UnstatedStrength& lacking) {
  return say(RigPhrase::of_of, say(rig, lacking.property), say(rig, lacking.of));
}

} // namespace

std::string lacking_words(const Rig& rig, const ChainLink& link) {
  std::vector<std::string> all;
  for (const UnstatedStrength& lacking : link.not_stated)
    all.push_back(of_words(rig, lacking));
  return joined(all, Join::comma);
}

std::string unknown_words(const Rig& rig, const StayChain& chain) {
  std::vector<std::pair<Remark, std::vector<std::string>>> by_property;
  for (const std::size_t i : chain.unknown)
    for (const UnstatedStrength& lacking : chain.links[i].not_stated) {
      const auto known = std::find_if(by_property.begin(), by_property.end(),
                                      [&](const auto& one) { return one.first == lacking.property; });
      auto& owners = known == by_property.end()
                         ? by_property.emplace_back(lacking.property, std::vector<std::string>{}).second
                         : known->second;
      if (std::string owner = say(rig, lacking.of);
          std::find(owners.begin(), owners.end(), owner) == owners.end())
        owners.push_back(std::move(owner));
    }
  std::vector<std::string> all;
  for (const auto& [property, owners] : by_property)
    all.push_back(say(RigPhrase::of_of, say(rig, property), joined(owners, Join::comma)));
  return joined(all, Join::semicolon);
}

} // namespace sheerpole
