#include "rules/record_checks.hpp"
#include "units/parse_quantity.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// The length at the beginning of a value as written, its source and tolerance left aside. Nothing for
/// anything else.
std::optional<Length> length_of(std::string text) {
  for (;;) {
    const auto read = parse_quantity(text);
    if (read.ok())
      return read.value().dimension == dimension::length ? std::optional(Length::from_si(read.value().si))
                                                         : std::nullopt;
    const std::size_t blank = text.find_last_of(' ');
    if (blank == std::string::npos)
      return std::nullopt;
    text.erase(blank);
  }
}

} // namespace

void check_made_differs(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::made_apart);
  for (const Difference& difference : rig.differences) {
    if (!difference.origin.starts_with("layer "))
      continue;
    const std::string what = difference.subject + " " + difference.property;
    const auto was = length_of(difference.was);
    const auto is = length_of(difference.is);
    if (!was || !is) {
      report.not_checked(difference.subject, difference.property + ": no two lengths to compare");
      continue;
    }
    const Length apart = *is > *was ? *is - *was : *was - *is;
    if (apart <= most)
      report.pass(difference.subject, difference.property + ": " + length_text(*is) + " where " +
                                          length_text(*was) + " was designed");
    else
      report.find(diagnose("made-differs", {{"what", what},
                                            {"origin", difference.origin.substr(6)},
                                            {"is", length_text(*is)},
                                            {"was", length_text(*was)},
                                            {"apart", length_text(apart)},
                                            {"most", length_text(most)}})
                      .at(difference.place)
                      .about(difference.subject));
  }
}

} // namespace sheerpole
