#include "elaborate/elaboration.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace sheerpole {

namespace {

/// One knot of a cord: which stay it keeps, and by which reading.
struct Knot {
  const Stay* stay = nullptr;
  const Reading* reading = nullptr;
};

std::string of_tally(int knots) {
  return knots == 1 ? "1 knot" : std::to_string(knots) + " knots";
}

/// Whether the file says that one knot keeps both: it is stated of the pair, or of one side by its distance
/// from the knot of the other.
bool is_shared(const Knot& one, const Knot& other) {
  return one.stay == other.stay || one.reading->place == other.reading->place ||
         (one.stay->base == other.stay->base && (one.reading->below_knot || other.reading->below_knot));
}

std::vector<Knot> knots_on(const Rig& rig, const std::string& cord) {
  std::vector<Knot> knots;
  for (const Stay& stay : rig.stays)
    for (const Reading& reading : stay.readings)
      if (reading.cord == cord)
        knots.push_back({&stay, &reading});
  return knots;
}

void report_clashes(Elaboration& elaboration, const std::string& cord, const std::vector<Knot>& knots) {
  for (std::size_t later = 1; later < knots.size(); ++later) {
    const Knot& one = knots[later];
    if (!one.reading->knots)
      continue;
    const auto clash = std::find_if(
        knots.begin(), knots.begin() + static_cast<std::ptrdiff_t>(later), [&](const Knot& other) {
          return other.reading->knots == one.reading->knots && !is_shared(other, one);
        });
    if (clash == knots.begin() + static_cast<std::ptrdiff_t>(later))
      continue;
    elaboration.sink.report(diagnose("cord-clash", {{"stay", one.stay->name},
                                                    {"other", clash->stay->name},
                                                    {"cord", cord},
                                                    {"tally", of_tally(*one.reading->knots)}})
                                .at(one.reading->place)
                                .and_at(clash->reading->place, clash->stay->name)
                                .about(one.stay->name));
  }
}

void report_without_tally(Elaboration& elaboration, const std::string& cord,
                          const std::vector<Knot>& knots) {
  std::set<const Stay*> stays;
  for (const Knot& knot : knots)
    stays.insert(knot.stay);
  if (stays.size() < 2)
    return;
  for (const Knot& knot : knots)
    if (!knot.reading->knots)
      elaboration.sink.report(
          diagnose("cord-tally-missing",
                   {{"stay", knot.stay->name}, {"cord", cord}, {"count", std::to_string(stays.size())}})
              .at(knot.reading->place)
              .about(knot.stay->name));
}

} // namespace

void check_knots(Elaboration& elaboration) {
  std::vector<std::string> cords;
  for (const Stay& stay : elaboration.rig.stays)
    for (const Reading& reading : stay.readings)
      if (!reading.cord.empty() && std::find(cords.begin(), cords.end(), reading.cord) == cords.end())
        cords.push_back(reading.cord);
  for (const std::string& cord : cords) {
    const std::vector<Knot> knots = knots_on(elaboration.rig, cord);
    report_clashes(elaboration, cord, knots);
    report_without_tally(elaboration, cord, knots);
  }
}

} // namespace sheerpole
