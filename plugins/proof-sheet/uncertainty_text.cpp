#include "backend/trials.hpp"
#include "plugins/proof-sheet/stay_proof.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t bound_name_width = 29;
constexpr std::size_t bound_width = 10;
constexpr std::size_t shown_shares = 5;

void range_row(std::string_view name, Length low, Length high, const std::string& how, TextPage& page) {
  page.wrapped("  " + padded(name, bound_name_width) +
                   padded_left(format_signed(Tenths::of(low)), bound_width) +
                   padded_left(format_signed(Tenths::of(high)), bound_width) + "   ",
               how);
}

std::string propagation_words(const Uncertainty& found) {
  std::string words = format_fixed(found.coverage_factor, 2) + " times a standard uncertainty of " +
                      format_fixed(found.standard.millimetres(), 2) + " mm";
  if (found.freedom > 0.0) {
    const std::string freedom = format_fixed(found.freedom, 0);
    words += ", " + freedom + (freedom == "1" ? " degree" : " degrees") + " of freedom";
  }
  return words + "; JCGM 100:2008";
}

void print_shares(const CheckedRig& checked, const Uncertainty& found, TextPage& page) {
  const Derived& derived = checked.derived();
  page.blank();
  page.line("What to measure next: the inputs by their share of the doubt");
  const std::size_t shown = std::min(found.shares.size(), shown_shares);
  for (std::size_t i = 0; i < shown; ++i) {
    const UncertaintyShare& share = found.shares[i];
    const UncertainInput& input = derived.inputs[share.input];
    const std::string place = place_words(checked, input.place);
    page.wrapped("  " + padded_left(std::to_string(i + 1) + ".", 3) + " " +
                     padded_left(variance_words(share.share), 11) + "   ",
                 say(checked.rig(), input.name) + ", which moves it by " +
                     format_signed(Tenths::of(share.per_bound)) +
                     (input.distribution == Distribution::student ? " mm by the scatter of its mean"
                                                                  : " mm at its bound") +
                     " (" + std::string(words(input.distribution)) + ")" +
                     (place.empty() ? "" : "; " + place));
  }
  if (shown < found.shares.size())
    page.line("      and " + std::to_string(found.shares.size() - shown) + " more of smaller share");
  if (found.without_bound.empty())
    return;
  page.blank();
  page.line("No bound is stated for these; the ranges above take them as exact");
  page.wrapped("  ", joined(say_each(checked.rig(), found.without_bound), Join::semicolon));
}

} // namespace

void print_uncertainty(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  page.blank();
  if (!stay.uncertainty) {
    page.line("How well it is known");
    page.wrapped("  not checked: ", "no bound is stated for anything that it follows");
    return;
  }
  const Derived& derived = checked.derived();
  const Uncertainty& found = *stay.uncertainty;
  page.line("How well it is known: the cut without burys and tails, which move no bearing");
  page.line("  " + padded("by how much it may be off", bound_name_width) +
            padded_left("from mm", bound_width) + padded_left("to mm", bound_width));
  range_row("at worst", found.worst_low, found.worst_high, "every input at its bound", page);
  range_row("law of propagation, 95 %", -found.expanded, found.expanded, propagation_words(found), page);
  range_row("Monte Carlo, 95 %", found.drawn_low, found.drawn_high,
            "of " + grouped(derived.draws) + " draws, seed " + std::to_string(derived.seed) +
                "; JCGM 101:2008",
            page);
  if (found.reaches)
    page.wrapped("  ", "the adjuster reaches in " + trials_words(*found.reaches, derived.draws) +
                           ", as set up and before any creep or cold: a count of draws, no promise");
  print_shares(checked, found, page);
}

} // namespace sheerpole
