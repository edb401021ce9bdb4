#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// The same stay on the other side of the boat; null when there is none.
const DerivedStay* other_side(const Rig& rig, const Derived& derived, const DerivedStay& stay);

/// What a check came to about one stay.
class StayReport {
public:
  explicit StayReport(const Rig& rig) : rig_(rig) {}

  void find(Diagnostic finding) { found_.push_back(std::move(finding)); }
  void find(DiagnosticBuilder&& builder) { found_.push_back(std::move(builder).build()); }
  /// The words do not name the stay: they are the same on both sides when the sides are alike.
  void pass(std::string words) { passed_.push_back(std::move(words)); }
  void pass(const Remark& remark) { pass(say(rig_, remark)); }
  void not_checked(std::string words) { not_checked_.push_back(std::move(words)); }
  void not_checked(const Remark& remark) { not_checked(say(rig_, remark)); }

  const std::vector<Diagnostic>& found() const { return found_; }
  const std::vector<std::string>& passed() const { return passed_; }
  const std::vector<std::string>& unchecked() const { return not_checked_; }

private:
  const Rig& rig_;
  std::vector<Diagnostic> found_;
  std::vector<std::string> passed_;
  std::vector<std::string> not_checked_;
};

/// Whether two say the same, to the last word and place.
bool alike(const StayReport& a, const StayReport& b);

/// Hands on what was said of one thing alone.
void hand_on(const StayReport& from, const std::string& subject, CheckReport& report);

/// Looks at one stay, calling it by the name given: `cap-shroud.port`, or `cap-shroud` for both sides.
using LookAtStay =
    std::function<void(const DerivedStay& stay, const std::string& name, StayReport& report)>;

/// Looks at each stay. What both sides of a mirrored stay have alike, to the last word and place, is said
/// once, about the stay without a side.
void look_at_stays(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtStay& look);

} // namespace sheerpole
