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

void pass(const Saying& saying, const std::string& subject, CheckReport& report) {
  if (saying.remark().empty())
    report.pass(subject, saying.words());
  else
    report.pass(subject, saying.remark());
}

void not_checked(const Saying& saying, const std::string& subject, CheckReport& report) {
  if (saying.remark().empty())
    report.not_checked(subject, saying.words());
  else
    report.not_checked(subject, saying.remark());
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

void hand_on(const StayReport& from, const std::string& subject, CheckReport& report) {
  for (const Diagnostic& finding : from.found())
    report.find(finding);
  for (const Saying& saying : from.passed())
    pass(saying, subject, report);
  for (const Saying& saying : from.unchecked())
    not_checked(saying, subject, report);
}

bool alike(const StayReport& a, const StayReport& b) {
  return a.passed() == b.passed() && a.unchecked() == b.unchecked() &&
         std::equal(a.found().begin(), a.found().end(), b.found().begin(), b.found().end(),
                    [](const Diagnostic& x, const Diagnostic& y) { return alike(x, y); });
}

namespace {

bool has(const std::vector<Saying>& all, const Saying& one) {
  // Words are made only where no remark is the same.
  return std::any_of(all.begin(), all.end(), [&](const Saying& other) { return one.same_remark(other); }) ||
         std::find(all.begin(), all.end(), one) != all.end();
}

bool has(const std::vector<Diagnostic>& all, const Diagnostic& one) {
  return std::any_of(all.begin(), all.end(), [&](const Diagnostic& other) { return alike(one, other); });
}

/// Looks at both sides of a stay, the one that stands first in the file first.
class BothSides {
public:
  BothSides(const Rig& rig, CheckReport& report, const LookAtStay& look)
      : rig_(rig), report_(report), look_(look) {}

  void look_at(const DerivedStay& first, const DerivedStay& second) {
    const std::string& base = rig_[first.stay].base;
    StayReport of_first(rig_);
    look_(first, base, of_first);
    StayReport of_second(rig_);
    look_(second, base, of_second);
    hand_on_texts(first, second, of_first, of_second);
    hand_on_findings(first, of_first, of_second, true);
    hand_on_findings(second, of_second, of_first, false);
  }

private:
  void hand_on_texts(const DerivedStay& first, const DerivedStay& second, const StayReport& of_first,
                     const StayReport& of_second) {
    const auto texts = [&](const auto& mine, const auto& other, const DerivedStay& stay, bool shared_too,
                           auto&& hand) {
      for (const Saying& saying : mine) {
        const bool shared = has(other, saying);
        if (!shared || shared_too)
          hand(saying, shared ? rig_[stay.stay].base : rig_[stay.stay].name, report_);
      }
    };
    texts(of_first.passed(), of_second.passed(), first, true, pass);
    texts(of_second.passed(), of_first.passed(), second, false, pass);
    texts(of_first.unchecked(), of_second.unchecked(), first, true, not_checked);
    texts(of_second.unchecked(), of_first.unchecked(), second, false, not_checked);
  }

  /// `mine` is what was found under the name for both sides. A finding of one side alone bears the name of
  /// that side, for which the stay is looked at again.
  void hand_on_findings(const DerivedStay& stay, const StayReport& mine, const StayReport& other,
                        bool shared_too) {
    std::vector<bool> shared;
    for (const Diagnostic& finding : mine.found())
      shared.push_back(has(other.found(), finding));
    const bool some_alone = std::find(shared.begin(), shared.end(), false) != shared.end();
    StayReport own(rig_);
    if (some_alone)
      look_(stay, rig_[stay.stay].name, own);
    for (std::size_t i = 0; i < shared.size(); ++i)
      if (!shared[i])
        report_.find(own.found()[i]);
      else if (shared_too)
        report_.find(mine.found()[i]);
  }

  const Rig& rig_;
  CheckReport& report_;
  const LookAtStay& look_;
};

} // namespace

void look_at_stays(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtStay& look) {
  BothSides both(rig, report, look);
  for (const DerivedStay& stay : derived.stays) {
    const DerivedStay* twin = other_side(rig, derived, stay);
    if (twin == nullptr) {
      StayReport alone(rig);
      look(stay, rig[stay.stay].name, alone);
      hand_on(alone, rig[stay.stay].name, report);
    } else if (stay.stay.index() < twin->stay.index()) {
      both.look_at(stay, *twin);
    }
  }
}

} // namespace sheerpole
