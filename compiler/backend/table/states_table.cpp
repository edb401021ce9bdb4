#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

Table states_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{.title = "States of the rig: adjusters that move, in mm",
              .columns = {{"state"},
                          {"stay"},
                          {"adjuster"},
                          {"set", true},
                          {"longer by", true},
                          {"to tighten", true},
                          {"to slacken", true},
                          {"stowed at"}},
              .rows = {},
              .notes = {}};
  for (const DerivedPosition& derived : checked.derived().positions) {
    const State& state = rig.states[derived.state];
    const StatePosition& position = state.positions[derived.position];
    const std::string stowed = position.stowed_at ? rig[*position.stowed_at].name : "";
    const auto tenths = [](Length length) { return format_tenths(Tenths::of(length)); };
    if (derived.adjusters.empty())
      table.rows.push_back({state.name, rig[derived.stay].name, "", "", "", "", "", stowed});
    for (const TakeUp& adjuster : derived.adjusters)
      table.rows.push_back({state.name, rig[derived.stay].name, rig[adjuster.part].name,
                            tenths(adjuster.set.value), tenths(derived.change), tenths(adjuster.to_tighten),
                            tenths(adjuster.to_slacken), stowed});
  }
  if (table.rows.empty())
    table.notes.push_back("No state moves anything.");
  return table;
}

} // namespace sheerpole
