#include "calculate/strength/screening_inputs.hpp"
#include "calculate/strength/shroud_load_share.hpp"

namespace sheerpole {

void screen_by_share(const Rig& rig, const Record& record, const Stay& stay, LoadScreening& screening) {
  ScreeningInputs inputs(rig, record, screening);
  const auto moment = inputs.righting_moment(true);
  const auto beam = inputs.half_beam(stay.path.empty() ? nullptr : &rig[stay.path.back().point]);
  const double factor =
      inputs.number("load-factor", 1.5, "of the method, for a mast that carries the headsails");
  const auto share = inputs.number("share");
  const auto break_factor = inputs.number("break-factor");
  inputs.not_used({"side-force"});
  if (!moment || !beam || !share || !break_factor)
    return;
  const auto total = transverse_shroud_load(*moment, *beam, factor);
  const auto load = total ? shroud_load(*total, *share) : std::nullopt;
  const auto asked = load ? required_break_load(*load, *break_factor) : std::nullopt;
  if (!asked) {
    screening.not_checked.emplace_back("the chainplate is in the middle of the boat");
    return;
  }
  const auto result = [&](std::string name, Force force, std::string how) {
    screening.results.push_back({std::move(name), {force.newtons(), dimension::force}, std::move(how), {}});
  };
  result("total across the boat", *total, "load-factor x righting-moment / half-beam");
  result("load of " + stay.base, *load, "share x total");
  result("break load asked for", *asked, "break-factor x load");
}

} // namespace sheerpole
