#include "base/internal_error.hpp"
#include "calculate/geometry/geometry_phrases.hpp"
#include "calculate/geometry/junctions.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/phrase_table.hpp"

namespace sheerpole {

std::string_view words(GeometryPhrase phrase) {
  switch (phrase) {
  case GeometryPhrase::against_spar:
    return "{}";
  case GeometryPhrase::against_nearest_spar:
    return "{}, the nearest spar";
  case GeometryPhrase::against_upright:
    return "upright, no mast is stated";
  case GeometryPhrase::stays_to_one_side:
    return "its stays all lead to one side of {}";
  case GeometryPhrase::no_other_stay:
    return "no other stay begins at {}";
  case GeometryPhrase::too_many_stays:
    return "{} stays meet at {}; three are compared";
  case GeometryPhrase::ends_in_one_line:
    return "the ends of its stays lie in one line";
  }
  internal_error("a phrase of geometry that has no words");
}

std::string_view words(PullDirection direction) {
  switch (direction) {
  case PullDirection::forward:
    return say(RigPhrase::forward);
  case PullDirection::aft:
    return say(RigPhrase::aft);
  case PullDirection::to_port:
    return say(RigPhrase::to_port);
  case PullDirection::to_starboard:
    return say(RigPhrase::to_starboard);
  }
  internal_error("a direction that has no words");
}

} // namespace sheerpole
