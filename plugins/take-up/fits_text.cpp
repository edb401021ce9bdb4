#include "plugins/take-up/stay_take_up.hpp"

namespace sheerpole {

namespace {

std::string millimetres(Length length) {
  return format_tenths(Tenths::of(length)) + " mm";
}

std::string parts_words(const FitWay& way) {
  std::string words;
  for (const auto& [part, count] : way.parts)
    words += (words.empty() ? "" : " and ") + std::to_string(count) + " x " + part;
  return words.empty() ? "nothing" : words;
}

void print_fit(const Rig& rig, const Fit& fit, TextPage& page) {
  const std::string lead = "  line of " + millimetres(fit.line) + ": ";
  if (!fit.not_checked.empty()) {
    page.wrapped(lead, "not checked: " + fit.not_checked);
    return;
  }
  const std::string& adjuster = rig[fit.adjuster].name;
  page.wrapped(lead, millimetres(fit.gap) + " to fill with parts and " + adjuster +
                         ", which shall be set to " + millimetres(fit.shortest) + " to " +
                         millimetres(fit.longest));
  for (std::size_t i = 0; i < fit.ways.size(); ++i)
    page.wrapped("  " + padded_left(std::to_string(i + 1) + ". ", 6),
                 "add " + parts_words(fit.ways[i]) + ", set " + adjuster + " to " +
                     millimetres(fit.ways[i].adjuster) + " (" + format_fixed(fit.ways[i].open * 100.0, 0) +
                     " % open)");
  if (!fit.ways.empty())
    return;
  const bool too_short = fit.short_by > Length{};
  page.wrapped("      ", "none fits with the parts in hand: the nearest is " +
                             millimetres(too_short ? fit.short_by : -fit.short_by) +
                             (too_short ? " too short" : " too long"));
}

} // namespace

void print_fits(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  if (stay.fits.empty())
    return;
  page.blank();
  page.line("Lines in hand: fewest parts first");
  for (const Fit& fit : stay.fits)
    print_fit(checked.rig(), fit, page);
}

} // namespace sheerpole
