#include "backend/table/rig_tables.hpp"

namespace sheerpole {

const std::vector<NamedTable>& rig_tables() {
  static const std::vector<NamedTable> tables{
      {"points", "every point with x, y, z and how it is known", points_table},
      {"lengths", "pin-to-pin, hardware and body of every stay, each way to the length", lengths_table},
      {"pieces", "every piece to cut: line, body and cut length", pieces_table},
      {"take-up", "how far every adjuster can go both ways", take_up_table},
      {"marks", "bench marks of every piece from both ends, and the dry fit", marks_table},
      {"readings", "what was read, each correction, and what could not be corrected", readings_table},
      {"uncertainty", "how well each cut is known: worst case, law of propagation, draws",
       uncertainty_table},
      {"measure-next", "the inputs that make a cut uncertain, the largest share first", shares_table},
      {"sensitivity", "how far each stay moves for 10 mm of a point, a degree of a spar, 10 mm of a part",
       sensitivity_table},
      {"temperature", "what each stay gains or loses from -10 to +40 degC", temperature_table},
      {"account", "what each adjuster has left after bedding-in, creep, cold and heat", account_table},
      {"tension", "tension as read from a swing, a pulse or a stretch; sag", tension_table},
      {"replaced", "the line of each stay against the one before", replaced_table},
      {"fits", "parts in hand and a setting with which a line fits", fits_table},
      {"play", "what parts that can be taken out or put in add to the adjusters", play_table},
      {"joints", "what was compared where two things meet", joints_table},
      {"strength", "what each link of a stay holds, and the weakest that is known", strength_table},
      {"loads", "loads of shrouds and mast by named screening methods", loads_table},
      {"checks", "how often each check passed, found something or could not look", checks_table},
      {"results", "what every check came to about every thing", results_table},
      {"limits", "the thresholds of the checks, what they rest on and what this rig sets", limits_table},
      {"stack", "every stack from aloft to deck with running distances", stack_table},
      {"parts", "the hardware: length or range, ends, source", parts_table},
      {"states", "how adjusters are set in the states of the rig", states_table},
      {"differences", "values that a layer, a sister ship or the command line states over others",
       differences_table},
      {"inspections", "what was found at inspections, when and by whom", inspections_table},
      {"record", "what is stated for the record: no length, check or order rests on it", record_table},
      {"sources", "every number of the rig files with its source", sources_table},
  };
  return tables;
}

} // namespace sheerpole
