#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "backend/turns.hpp"
#include "calculate/least_engagement_words.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

std::string optional_tenths(const std::optional<Length>& length) {
  return length ? format_tenths(Tenths::of(*length)) : std::string();
}

} // namespace

Table take_up_table(const CheckedRig& checked) {
  Table table{.title = "Take-up: how far every adjuster can go from where it is set",
              .columns = {{"stay"},
                          {"part"},
                          {"set mm", true},
                          {"to tighten mm", true},
                          {"tighten turns", true},
                          {"to slacken mm", true},
                          {"slacken turns", true},
                          {"mm per turn", true},
                          {"thread engaged mm", true},
                          {least_engagement_words(checked.rig()) + " mm", true}},
              .rows = {},
              .notes = {"A negative amount: the adjuster is set beyond its range.",
                        checked.rig().limits.find(Limit::thread_engaged) != nullptr
                            ? "How much thread is to be engaged is stated in the rig's own limits."
                            : "One diameter of thread engaged is common practice, no source."}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const TakeUp& adjuster : stay.adjusters)
      table.rows.push_back(
          {checked.rig()[stay.stay].name, checked.rig()[adjuster.part].name,
           format_tenths(Tenths::of(adjuster.set.value)), format_tenths(Tenths::of(adjuster.to_tighten)),
           format_turns(adjuster.to_tighten, adjuster.travel_per_turn),
           format_tenths(Tenths::of(adjuster.to_slacken)),
           format_turns(adjuster.to_slacken, adjuster.travel_per_turn),
           adjuster.travel_per_turn ? format_millimetres(*adjuster.travel_per_turn, 2) : "",
           optional_tenths(adjuster.engaged), optional_tenths(adjuster.least_engagement)});
  return table;
}

} // namespace sheerpole
