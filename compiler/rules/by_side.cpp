#include "rules/by_side.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool same_label(const Label& a, const Label& b) {
  return a.span == b.span && a.text == b.text;
}

bool alike(const Diagnostic& a, const Diagnostic& b) {
  return a.slug == b.slug && a.message == b.message && a.primary.has_value() == b.primary.has_value() &&
         (!a.primary || same_label(*a.primary, *b.primary)) &&
         std::equal(a.others.begin(), a.others.end(), b.others.begin(), b.others.end(), same_label);
}

} // namespace

const DerivedStay* other_side(const Rig& rig, const Derived& derived, const DerivedStay& stay) {
  const Stay& here = rig[stay.stay];
  if (here.side == Side::centre)
    return nullptr;
  const auto is_twin = [&](const DerivedStay& candidate) {
    const Stay& there = rig[candidate.stay];
    return there.base == here.base && there.side != Side::centre && there.side != here.side;
  };
  // The sides of a stay are read one behind the other; a scan for each would cost the square of their
  // number.
  const std::size_t index = stay.stay.index();
  for (const std::size_t near : {index - 1, index + 1})
    if (near < derived.stays.size() && is_twin(derived.stays[near]))
      return &derived.stays[near];
  const auto found = std::find_if(derived.stays.begin(), derived.stays.end(), is_twin);
  return found == derived.stays.end() ? nullptr : &*found;
}

void report_by_side(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                    const FindingsOfStay& findings_of) {
  for (const DerivedStay& stay : derived.stays) {
    const std::string& name = rig[stay.stay].name;
    const std::string& base = rig[stay.stay].base;
    std::vector<Diagnostic> own = findings_of(stay, name);
    const DerivedStay* twin = other_side(rig, derived, stay);
    if (twin == nullptr) {
      for (Diagnostic& finding : own)
        sink.report(std::move(finding));
      continue;
    }
    std::vector<Diagnostic> of_both = findings_of(stay, base);
    const std::vector<Diagnostic> of_twin = findings_of(*twin, base);
    for (std::size_t i = 0; i < own.size(); ++i) {
      const bool shared = std::any_of(of_twin.begin(), of_twin.end(),
                                      [&](const Diagnostic& other) { return alike(of_both[i], other); });
      // The twin's turn brings the same finding again; the sink drops it.
      sink.report(std::move(shared ? of_both[i] : own[i]));
    }
  }
}

} // namespace sheerpole
