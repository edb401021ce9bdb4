#include "wording/draft_phrases.hpp"

namespace sheerpole {

std::string_view words(DraftPhrase phrase) {
  using enum DraftPhrase;
  switch (phrase) {
  case is_assumed:
    return "{} is assumed";
  case measure_it:
    return "measure it, or name who gave the number";
  case is_missing:
    return "{} is missing";
  case the_length_x:
    return "the length X";
  case set_on_command_line:
    return "{} is set on the command line";
  case write_it_down:
    return "write it into the file when it is to stay";
  case nothing_read_in_place:
    return "nothing was read in place";
  case read_it_in_place:
    return "measure the stay in place; who cuts from plans states cut-from: drawing with the reason";
  case readings_contradict:
    return "two readings contradict each other";
  case say_which:
    return "measure again, or state counts: yes in the one that counts";
  case measured_once:
    return "it was measured once";
  case measure_again:
    return "measure it a second time, or by a second way";
  }
  return {};
}

} // namespace sheerpole
