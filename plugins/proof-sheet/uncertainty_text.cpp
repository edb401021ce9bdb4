#include "backend/trials.hpp"
#include "plugins/proof-sheet/stay_proof.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 34;

std::string range(Length low, Length high) {
  return format_signed(Tenths::of(low)) + " to " + format_signed(Tenths::of(high)) + " mm";
}

void row(const std::string& name, const std::string& text, TextPage& page) {
  page.wrapped("  " + padded(name, name_width) + "   ", text);
}

void print_shares(const Derived& derived, const Uncertainty& found, TextPage& page) {
  page.blank();
  page.line("What to measure next");
  const std::size_t shown = std::min<std::size_t>(found.shares.size(), 5);
  for (std::size_t i = 0; i < shown; ++i) {
    const UncertaintyShare& share = found.shares[i];
    const UncertainInput& input = derived.inputs[share.input];
    page.wrapped("  " + padded_left(std::to_string(i + 1) + ".", 3) + " " +
                     padded_left(format_fixed(share.share * 100.0, 1) + " %", 8) + "   ",
                 input.name + ", which moves it by " + format_signed(Tenths::of(share.per_bound)) +
                     (input.distribution == Distribution::student ? " mm by the scatter of its mean"
                                                                  : " mm at its bound") +
                     " (" + std::string(name_of(input.distribution)) + ")");
  }
  if (shown < found.shares.size())
    page.line("      and " + std::to_string(found.shares.size() - shown) + " more of smaller share");
  if (found.without_bound.empty())
    return;
  std::string names;
  for (const std::string& name : found.without_bound)
    names += (names.empty() ? "" : "; ") + name;
  page.wrapped("  no bound is stated for   ", names);
}

} // namespace

void print_uncertainty(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  page.blank();
  page.line("How well it is known");
  if (!stay.uncertainty) {
    row("not checked", "no bound is stated for anything that it follows", page);
    return;
  }
  const Derived& derived = checked.derived();
  const Uncertainty& found = *stay.uncertainty;
  row("at worst", range(found.worst_low, found.worst_high) + "; every input at its bound", page);
  row("law of propagation",
      "+-" + format_tenths(Tenths::of(found.expanded)) +
          " mm for 95 %: " + format_fixed(found.coverage_factor, 2) + " times a standard uncertainty of " +
          format_fixed(found.standard.millimetres(), 2) + " mm" +
          (found.freedom > 0.0 ? ", " + format_fixed(found.freedom, 0) + " degrees of freedom" : "") +
          " (JCGM 100:2008)",
      page);
  row("Monte Carlo",
      range(found.drawn_low, found.drawn_high) + " for 95 % of " + std::to_string(derived.draws) +
          " draws, seed " + std::to_string(derived.seed) + " (JCGM 101:2008)",
      page);
  if (found.reaches)
    row("the adjuster reaches",
        "in " + trials_words(*found.reaches, derived.draws) + ", as set up and before any creep or cold",
        page);
  row("of what", "of the cut without burys and tails, which move no bearing", page);
  print_shares(derived, found, page);
}

} // namespace sheerpole
