#include "backend/table/tune_words.hpp"

#include "backend/table/tune_tables.hpp"
#include "units/format_length.hpp"
#include "wording/papers/tune_sheet_words.hpp"
#include "wording/say.hpp"

#include <cmath>

namespace sheerpole {

namespace {

using Kind = TuneQuantity::Kind;

std::string unsigned_turns(const TuneStay& stay, double turns) {
  const std::string number = format_fixed(turns, turns == std::round(turns) ? 0 : 1);
  if (stay.by_turns)
    return number + (turns == 1.0 ? say(TuneSheetPhrase::turn) : say(TuneSheetPhrase::turns));
  if (stay.step_mm == 1.0)
    return number + " mm";
  return number + (turns == 1.0 ? say(TuneSheetPhrase::hole) : say(TuneSheetPhrase::holes));
}

} // namespace

std::string format_kilonewtons(double newtons) {
  return format_fixed(newtons / 1000.0, 2);
}

std::string format_signed(double value, int decimals) {
  const std::string text = format_fixed(std::abs(value), decimals);
  const bool nothing = text.find_first_of("123456789") == std::string::npos;
  return nothing ? text : (value < 0.0 ? "-" : "+") + text;
}

std::string turned_words(const CheckedRig& checked, const TuneModel& model, const TurnedStays& turned) {
  const Stay& stay = checked.rig()[model.stays[turned.stays.front()].stay];
  return turned.stays.size() > 1 ? say(TuneSheetPhrase::both, stay.base) : stay.name;
}

std::string step_words(const TuneModel& model, const TurnedStays& turned) {
  const TuneStay& stay = model.stays[turned.stays.front()];
  return format_fixed(stay.step_mm, 2) + " mm";
}

std::string turns_words(const TuneModel& model, const TurnedStays& turned, double turns) {
  const TuneStay& stay = model.stays[turned.stays.front()];
  return unsigned_turns(stay, std::abs(turns)) +
         (turns < 0.0 ? say(TuneSheetPhrase::slacker) : say(TuneSheetPhrase::tighter));
}

std::string quantity_words(const CheckedRig& checked, const TunedRig& tuned, std::size_t number) {
  const TuneQuantity& quantity = tuned.quantities[number];
  const auto at_spreader = [&] {
    const Point& point = checked.rig()[tuned.model.spars[quantity.number].spreaders[quantity.place].root];
    return say(TuneSheetPhrase::at, point.base);
  };
  switch (quantity.kind) {
  case Kind::tension:
    return say(TuneSheetPhrase::tension);
  case Kind::head_aft:
    return say(TuneSheetPhrase::head_aft);
  case Kind::head_starboard:
    return say(TuneSheetPhrase::head_to_starboard);
  case Kind::bend_forward:
    return say(TuneSheetPhrase::bend_forward, at_spreader());
  case Kind::bend_starboard:
    return say(TuneSheetPhrase::bend_to_starboard, at_spreader());
  }
  return {};
}

std::string column_words(const CheckedRig& checked, const TunedRig& tuned, std::size_t number) {
  const TuneQuantity& quantity = tuned.quantities[number];
  if (quantity.kind == Kind::tension)
    return std::to_string(quantity.number + 1);
  std::size_t masts = 0;
  for (const TuneQuantity& other : tuned.quantities)
    masts += other.kind == Kind::head_aft ? 1 : 0;
  const std::string of =
      masts > 1 ? checked.rig().spars[tuned.model.spars[quantity.number].spar].name + " " : "";
  switch (quantity.kind) {
  case Kind::head_aft:
    return say(TuneSheetPhrase::aft, of);
  case Kind::head_starboard:
    return say(TuneSheetPhrase::stb, of);
  case Kind::bend_forward:
  case Kind::bend_starboard:
    return say(TuneSheetPhrase::bend, of,
               (tuned.model.spars[quantity.number].spreaders.size() > 1
                    ? " " + std::to_string(quantity.place + 1)
                    : std::string()));
  case Kind::tension:
    break;
  }
  return {};
}

std::string doubt_words(const TuneReport& report, std::size_t quantity) {
  if (report.doubt.inputs == 0)
    return "";
  const double off = report.doubt.of_value[quantity].expanded;
  return report.tuned.quantities[quantity].kind == Kind::tension ? format_kilonewtons(off)
                                                                 : format_fixed(off, 1);
}

std::vector<std::size_t> shown_quantities(const TunedRig& tuned) {
  std::vector<std::size_t> result;
  for (std::size_t q = 0; q < tuned.quantities.size(); ++q)
    if (tuned.quantities[q].kind != Kind::bend_starboard)
      result.push_back(q);
  return result;
}

} // namespace sheerpole
