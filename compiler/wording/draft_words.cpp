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
  case in_hand_short:
    return "what is in hand is {} too short";
  case take_another_piece:
    return "give up spare bury or take another piece";
  }
  return {};
}

} // namespace sheerpole
