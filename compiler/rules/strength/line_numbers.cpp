#include "calculate/facts.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/strength/lines_of_stays.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"

#include <algorithm>
#include <array>

/// Numbers stated of a line that it can hardly have.
namespace sheerpole::line_numbers {

namespace {

using Common = AnyCheckPhrase;

using P = StrengthCheckPhrase;

/// Laid up of round wires, so that the metal fills a share of the circle only.
bool is_stranded(const LineMaterial& material) {
  const Construction& made = material.construction;
  return material.kind == LineMaterial::Kind::wire && made.lay == Lay::strand &&
         (made.wires_in_strand == 19 || (made.strands == 7 && made.wires_in_strand == 7));
}

Fixed gigapascals(double pascals) {
  return {pascals / 1e9, 1};
}

void check_modulus_on_wrong_area(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::gross_modulus);
  if (!most)
    return;
  for (const MaterialId id : lines_in_use(rig, derived)) {
    const LineMaterial& wire = rig[id];
    if (!is_stranded(wire))
      continue;
    const auto stiffness = line_stiffness(wire);
    const auto area = gross_area(wire.diameter.value);
    if (!stiffness || !area || !(*area > 0.0)) {
      report.not_checked(wire.name, {Common::not_stated, {Words{"stiffness"}}});
      continue;
    }
    const double on_circle = stiffness->value.newtons() / *area;
    const Remark words(P::on_full_circle, {stiffness->value, gigapascals(on_circle), wire.diameter.value});
    const Remark at_most(P::gigapascals, {gigapascals(*most)});
    if (is_below(*most, on_circle))
      report.find(diagnose("modulus-on-wrong-area",
                           {{"line", wire.name}, {"words", say(rig, words)}, {"most", say(rig, at_most)}})
                      .at(stiffness->provenance.place.value_or(wire.place))
                      .and_at(wire.place, wire.construction.text)
                      .about(wire.name));
    else
      report.pass(wire.name, {Common::at_most, {Remarks{{words}}, Remarks{{at_most}}}});
  }
}

/// In kN/mm2.
Fixed on_square(double pascals) {
  return {pascals / 1e9, 2};
}

Remark bounds(std::optional<double> low, std::optional<double> high) {
  if (low && high)
    return {P::lines_have_between, {on_square(*low), on_square(*high)}};
  return low ? Remark(P::lines_have_more, {on_square(*low)})
             : Remark(P::lines_have_less, {on_square(*high)});
}

/// A rope of polyester or polyamide holds about a third of one of HMPE or a wire as thick, so that both
/// bounds are a third. Source: ISO 1141 and ISO 1140, minimum breaking strengths of 3-strand ropes, from
/// memory.
double share_of_bounds(const LineMaterial& line) {
  const Fibre fibre = line.construction.fibre;
  return fibre == Fibre::polyester || fibre == Fibre::polyamide ? 1.0 / 3.0 : 1.0;
}

void check_break_load_unlikely(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto least = rig.limits.value(Limit::break_load_low);
  const auto most = rig.limits.value(Limit::break_load_high);
  if (!least && !most)
    return;
  for (const MaterialId id : lines_in_use(rig, derived)) {
    const LineMaterial& line = rig[id];
    const double diameter = line.diameter.value.metres();
    if (!line.break_load || !(diameter > 0.0)) {
      report.not_checked(line.name, {Common::not_stated, {Words{"break-load"}}});
      continue;
    }
    const auto of_line = [share = share_of_bounds(line)](std::optional<double> bound) {
      return bound ? std::optional(*bound * share) : std::nullopt;
    };
    const auto low = of_line(least);
    const auto high = of_line(most);
    const double ratio = line.break_load->value.newtons() / (diameter * diameter);
    const Remark words(P::over_square, {line.break_load->value, line.diameter.value, on_square(ratio),
                                        Remarks{{bounds(low, high)}}});
    if ((low && is_below(ratio, *low)) || (high && is_below(*high, ratio)))
      report.find(diagnose("break-load-unlikely", {{"line", line.name}, {"words", say(rig, words)}})
                      .at(line.break_load->provenance.place.value_or(line.place))
                      .about(line.name));
    else
      report.pass(line.name, words);
  }
}

} // namespace

const CheckTable checks{
    CheckRow{"modulus-on-wrong-area", check_modulus_on_wrong_area, {Limit::gross_modulus}},
    CheckRow{
        "break-load-unlikely", check_break_load_unlikely, {Limit::break_load_low, Limit::break_load_high}}};

} // namespace sheerpole::line_numbers
