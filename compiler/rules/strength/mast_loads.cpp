#include "calculate/facts.hpp"
#include "calculate/strength/spar_strength.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/strength/lines_of_stays.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"

#include <algorithm>

/// What is pulled at the dock, and what that and the sails press into the mast.
namespace sheerpole::mast_loads {

namespace {

using Common = AnyCheckPhrase;

using P = StrengthCheckPhrase;

/// Holds the dock tension of every wire and rod, over its break load, against one limit. Rope is set by its
/// geometry and is not looked at.
template <Limit limit>
void check_pretension(const Rig& rig, const Derived& derived, CheckReport& report) {
  constexpr bool at_least = limit == Limit::pretension_least;
  const auto bound = rig.limits.value(limit);
  if (!bound)
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  for (const MaterialId id : lines_of(derived_stay)) {
                    const LineMaterial& line = rig[id];
                    if (line.kind != LineMaterial::Kind::wire && line.kind != LineMaterial::Kind::rod)
                      continue;
                    const auto dock = dock_share(rig[derived_stay.stay], line, of_stay);
                    if (!dock)
                      continue;
                    const Remark words(at_least ? Common::at_least : Common::at_most,
                                       {Remarks{{dock->words}}, Share{*bound}});
                    if (at_least ? is_below(dock->share, *bound) : is_below(*bound, dock->share))
                      of_stay.find(diagnose(report.check(), {{"stay", name}, {"words", say(rig, words)}})
                                       .at(dock->place)
                                       .about(name));
                    else
                      of_stay.pass(words);
                  }
                });
}

/// What stays, halyards and sheets press into a mast besides the side force: in all so many times as much.
/// From memory of Kinney, Skene's Elements of Yacht Design, 8th ed.; it was not read.
constexpr double with_stays_and_sheets = 1.85;

struct LoadedPanel {
  const MastPanel* panel = nullptr;
  Force buckles;
  Force compression;  ///< with what stays, halyards and sheets add
  double times = 0.0; ///< buckling load over compression
};

/// The panel that is nearest to buckling; nothing when none is pressed.
LoadedPanel worst_of(const std::vector<MastPanel>& panels, double bending_stiffness) {
  LoadedPanel worst;
  for (const MastPanel& panel : panels) {
    const auto buckles = column_buckling_load(bending_stiffness, 1.0, panel.length);
    const auto compression = mast_compression(panel.compression, with_stays_and_sheets);
    if (!buckles || !compression)
      continue;
    const double times = *buckles / *compression;
    if (worst.panel == nullptr || times < worst.times)
      worst = {&panel, *buckles, *compression, times};
  }
  return worst;
}

const Spar* spar_named(const Rig& rig, const std::string& name) {
  const auto found =
      std::find_if(rig.spars.begin(), rig.spars.end(), [&](const Spar& spar) { return spar.name == name; });
  return found == rig.spars.end() ? nullptr : &*found;
}

void look_at_panels(const Rig& rig, const LoadScreening& screening, double least, CheckReport& report) {
  const Remark by(P::screening_of, {Words{screening.of}});
  const Spar* mast = spar_named(rig, screening.spar);
  if (!screening.equilibrium) {
    report.not_checked(
        screening.of,
        {Common::of_something,
         {Remarks{{by}},
          Remarks{{screening.not_checked.empty() ? Remark() : screening.not_checked.front()}}}});
    return;
  }
  if (mast == nullptr) {
    report.not_checked(screening.of, {P::no_spar});
    return;
  }
  const auto stiffness = fact_number(mast->particulars, fact_names.bending_stiffness_across);
  if (!stiffness) {
    report.not_checked(mast->name, {Common::not_stated, {Words{"bending-stiffness-across"}}});
    return;
  }
  const LoadedPanel worst = worst_of(screening.panels, stiffness->value);
  if (worst.panel == nullptr) {
    report.not_checked(mast->name, {P::no_lowest_panel});
    return;
  }
  const Remark words(P::buckles_at, {Remarks{{worst.panel->name}}, worst.panel->length, worst.buckles,
                                     Words{format_number(stiffness->value / 1e3)}, Fixed{worst.times, 2},
                                     worst.compression, Fixed{with_stays_and_sheets, 2},
                                     worst.panel->compression, Remarks{{by}}});
  if (is_below(worst.times, least))
    report.find(diagnose("panel-overloaded",
                         {{"mast", mast->name}, {"words", say(rig, words)}, {"least", times_text(least)}})
                    .at(stiffness->provenance.place.value_or(mast->place))
                    .and_at(screening.place, said(P::gives_compression))
                    .about(mast->name));
  else
    report.pass(mast->name, {Common::at_least, {Remarks{{words}}, Fixed{least, 2}}});
}

bool is_mast(const Spar& spar) {
  return spar.sort == SparSort::mast || spar.sort == SparSort::mizzen;
}

void check_panel_overloaded(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto least = rig.limits.value(Limit::buckling_factor);
  if (!least)
    return;
  std::vector<std::string> screened;
  for (const LoadScreening& screening : derived.load_screenings)
    if (screening.method == ScreeningMethod::joint_equilibrium) {
      look_at_panels(rig, screening, *least, report);
      screened.push_back(screening.spar);
    }
  for (const Spar& spar : rig.spars)
    if (is_mast(spar) && std::find(screened.begin(), screened.end(), spar.name) == screened.end())
      report.not_checked(spar.name, {P::no_screening});
}

} // namespace

const CheckTable checks{
    CheckRow{"pretension-low", check_pretension<Limit::pretension_least>, {Limit::pretension_least}},
    CheckRow{"pretension-high", check_pretension<Limit::pretension_most>, {Limit::pretension_most}},
    CheckRow{"panel-overloaded", check_panel_overloaded, {Limit::buckling_factor}}};

} // namespace sheerpole::mast_loads
