#include "rules/record_checks.hpp"
#include "units/format_length.hpp"

#include <set>
#include <tuple>
#include <vector>

namespace sheerpole {

namespace {

/// A number that reaches a cut and says nothing of where it is from.
struct Untraced {
  std::string name;
  Span place;
};

/// Each once, however many cuts it reaches, in the order in which the cuts meet them.
std::vector<Untraced> untraced_of(const Derived& derived) {
  std::set<std::tuple<std::uint32_t, std::uint32_t, std::uint32_t>> seen;
  std::vector<Untraced> all;
  const auto look = [&](const LengthSum& sum) {
    for (const Term& term : sum.terms) {
      const Provenance& from = term.provenance;
      if (from.source_class != SourceClass::unstated || !from.place)
        continue;
      const Span& span = *from.place;
      if (seen.emplace(span.source.value, span.begin, span.end).second)
        all.push_back({term.name, span});
    }
  };
  for (const DerivedStay& stay : derived.stays) {
    look(stay.pin_to_pin);
    for (const Piece& piece : stay.pieces) {
      look(piece.body);
      look(piece.cut);
    }
  }
  return all;
}

} // namespace

void check_number_without_source(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::untraced_numbers);
  const std::vector<Untraced> all = untraced_of(derived);
  const std::string count = all.empty() ? "no number that reaches a cut lacks its source"
                            : all.size() == 1
                                ? "1 number that reaches a cut has no source"
                                : std::to_string(all.size()) + " numbers that reach a cut have no source";
  if (static_cast<double>(all.size()) <= most) {
    report.pass("this rig", count);
    return;
  }
  constexpr std::size_t named = 3;
  std::string names;
  for (std::size_t i = 0; i < all.size() && i < named; ++i)
    names += (names.empty() ? "" : ", ") + all[i].name;
  if (all.size() > named)
    names += " and " + std::to_string(all.size() - named) + " more";
  auto builder =
      diagnose("number-without-source", {{"count", count}, {"most", format_number(most)}, {"names", names}})
          .at(all.front().place, "no source stands behind it")
          .about("this rig");
  for (std::size_t i = 1; i < all.size() && i < named; ++i)
    builder = std::move(builder).and_at(all[i].place, "nor here");
  report.find(std::move(builder));
}

} // namespace sheerpole
