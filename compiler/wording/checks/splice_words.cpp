#include "wording/checks/splice_phrases.hpp"

namespace sheerpole {

std::string_view words(SpliceCheckPhrase phrase) {
  using enum SpliceCheckPhrase;
  switch (phrase) {
  case splice_on:
    return "{} on {}";
  case buries:
    return "{} on {} buries {}, {} d";
  case diameters:
    return "{} d";
  case hardly_any_below:
    return "{} d, and hardly any rule goes below {} d";
  case spliced_here:
    return "spliced here";
  case the_bury:
    return "the bury";
  case tapered_over:
    return "{} on {} is tapered over {} of {}";
  case buried_of:
    return "{} of {}";
  case length_is_x:
    return "the length of {} is X";
  case between_throats:
    return "{} in {} of {} between the throats";
  case between_bearings:
    return "{} in {} of {} between the bearings";
  case pear_shaped:
    return "{} round {}: pear-shaped, both legs lie in its groove";
  case no_diameter:
    return "{} round {}: the diameter of the rope-seat is not stated";
  case no_throat:
    return "{} round {}: the throat of the rope-seat is not stated";
  case throat_within:
    return "{} round {}: the throat lies within the rope on the seat";
  case legs_leave:
    return "{} round {}: each leg leaves the throat at {} from the pull";
  case bearing_to_throat:
    return "{} round {}: {} from bearing to throat, {} times the seat of {}";
  case two_ways:
    return "{} round {}: the test wrap gives {}, the geometry of the seat {}";
  case the_test_wrap:
    return "the test wrap";
  }
  return {};
}

} // namespace sheerpole
