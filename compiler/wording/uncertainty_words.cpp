#include "base/internal_error.hpp"
#include "calculate/uncertainty/uncertainty.hpp"
#include "calculate/uncertainty/uncertainty_phrases.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/phrase_table.hpp"

namespace sheerpole {

std::string_view words(UncertaintyPhrase phrase) {
  switch (phrase) {
  case UncertaintyPhrase::named:
    return "{}";
  case UncertaintyPhrase::property_of:
    return "{} of {}";
  case UncertaintyPhrase::eye_allowance_of:
    return "eye allowance of {}";
  case UncertaintyPhrase::tail_to_trim_of:
    return "tail to trim of {}";
  case UncertaintyPhrase::hoist_offset_of:
    return "hoist offset of {}";
  case UncertaintyPhrase::setting_of:
    return "setting of {}";
  case UncertaintyPhrase::spare_bury_at:
    return "spare bury at {}";
  case UncertaintyPhrase::the_line:
    return "the line";
  case UncertaintyPhrase::place_of:
    return "{} of the place of {}";
  case UncertaintyPhrase::test_splice_of:
    return "the test splice of {}";
  case UncertaintyPhrase::reading_of:
    return "the reading of {}";
  case UncertaintyPhrase::run_of:
    return "run {} of {}";
  case UncertaintyPhrase::tape_error:
    return "error of the tape {}";
  case UncertaintyPhrase::scatter_of_runs:
    return "scatter of the runs of {}";
  case UncertaintyPhrase::knot_of_cord:
    return "knot of {} on the cord {}";
  case UncertaintyPhrase::resolution_of:
    return "resolution of the reading of {}";
  case UncertaintyPhrase::resolution_by_practice:
    return "resolution of the reading of {}, half a division by practice";
  case UncertaintyPhrase::scatter_of_tests:
    return "scatter of the test splices of {}";
  case UncertaintyPhrase::repeatability_of:
    return "by how much the splices of {} differ from its one test splice";
  case UncertaintyPhrase::first_creep_rule:
    return "whether the first creep of {} gives the contraction back";
  }
  internal_error("a phrase of uncertainty that has no words");
}

std::string_view words(Distribution distribution) {
  switch (distribution) {
  case Distribution::rectangular:
    return say(RigPhrase::rectangular);
  case Distribution::triangular:
    return say(RigPhrase::triangular);
  case Distribution::normal_at_two:
    return say(RigPhrase::normal_bound_two_standard);
  case Distribution::student:
    return say(RigPhrase::mean_repeated_readings);
  }
  internal_error("a distribution that has no words");
}

} // namespace sheerpole
