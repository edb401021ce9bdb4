#pragma once

#include "calculate/uncertainty/uncertainty_phrases.hpp"
#include "unit/backend/sample_rig.hpp"

namespace sheerpole {

/// The cap shroud of the sample rig with an account, a range, a slip, a tension, a line before and a fit.
/// By hand: to tighten 100 less 20 bedding-in, 1 or 4 creep, 6 cold and 7.3 doubt leaves 65.7 or 62.7; to
/// slacken 100 less 5 heat and 7.3 leaves 87.7.
inline SampleRig measured_shroud() {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const auto mm = [](double value) { return Length::millimetres(value); };
  const auto say = [](const char* text) { return SampleRig::saying(text); };
  DerivedStay& stay = sample.derived.stays[0];
  stay.other_routes.push_back({LengthRoute::path,
                               mm(11725.0),
                               mm(-83.0),
                               SampleRig::known(SourceClass::computed, "from points"),
                               {{say("toggle-12, 82 mm, was left out"), mm(1.0)}}});
  stay.not_corrected = {say("tape pull: pull of the reading is not stated")};
  stay.pieces[0].not_counted = {say("stretch from bench to dock: dock-tension is not stated")};

  Uncertainty known;
  known.worst_low = mm(-13.3);
  known.worst_high = mm(13.2);
  known.standard = mm(3.725);
  known.coverage_factor = 1.96;
  known.expanded = mm(7.3);
  known.drawn_low = mm(-6.8);
  known.drawn_high = mm(6.9);
  known.reaches = 1.0;
  const auto named = [](const char* name) { return Remark(UncertaintyPhrase::named, {Words{name}}); };
  known.without_bound = {named("length of thimble-9"), named("setting of lashing-4")};
  sample.derived.inputs = {
      {named("eye-allowance of long-bury"), 0.003, Distribution::rectangular, 0, {}},
      {named("scatter of the runs of cap-shroud.port"), 0.0006, Distribution::student, 3, {}}};
  known.shares = {{0, mm(6.0), mm(3.46), 0.864}, {1, mm(0.6), mm(0.6), 0.136}};
  stay.uncertainty = known;

  stay.account.to_tighten = mm(100.0);
  stay.account.to_slacken = mm(100.0);
  stay.account.entries = {
      {.name = say("bedding-in"), .tightens = mm(20.0), .how = say("0.2 % of 10000 mm")},
      {.name = say("creep in 1 year"), .tightens = mm(1.0), .dated = true, .how = say("by the table")},
      {.name = say("creep in 5 years"), .tightens = mm(4.0), .dated = true, .how = say("by the table")},
      {.name = say("coldest day"), .tightens = mm(6.0), .of_temperature = true},
      {.name = say("warmest day"), .slackens = mm(5.0), .of_temperature = true},
      {.name = say("uncertainty of the length"), .tightens = mm(7.3), .slackens = mm(7.3)}};
  stay.account.left = {{say("1 year"), mm(65.7), mm(87.7), true},
                       {say("5 years"), mm(62.7), mm(87.7), true}};
  stay.thermal.rows = {{263.15, mm(2.4), mm(-4.8)}, {313.15, mm(-1.9), mm(3.8)}};
  stay.tensions = {{.method = TensionMethod::swing,
                    .tension = Force::kilonewtons(3.15),
                    .tolerance = {},
                    .influences = {},
                    .share_of_break = 0.034,
                    .how = say("4 m L2 f2"),
                    .not_checked = {},
                    .date = "2026-05-24",
                    .by = "owner",
                    .place = {}},
                   {.method = TensionMethod::pulse,
                    .tension = {},
                    .tolerance = {},
                    .influences = {},
                    .share_of_break = {},
                    .how = {},
                    .not_checked = say("linear-mass of hmpe-9 is not stated"),
                    .date = "",
                    .by = "",
                    .place = {}}};
  Replacement before;
  before.old_line = MaterialId{1};
  before.stiffness = 1.56;
  before.not_checked = {say("break-load of wire-6 is not stated")};
  stay.replacement = before;
  Fit fits;
  fits.line = mm(11350.0);
  fits.gap = mm(208.0);
  fits.adjuster = stay.adjusters[0].part;
  fits.shortest = mm(60.0);
  fits.longest = mm(260.0);
  FitWay way;
  way.parts = {{sample.add_part("link", "link-24", Part::Role::fixed, 24.0), 2}};
  way.adjuster = mm(160.0);
  way.open = 0.5;
  fits.ways = {way};
  Fit none = fits;
  none.line = mm(11700.0);
  none.ways.clear();
  none.short_by = mm(-202.0);
  stay.fits = {fits, none};
  return sample;
}

} // namespace sheerpole
