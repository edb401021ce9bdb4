#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// The same stay on the other side of the boat; null when there is none.
const DerivedStay* other_side(const Rig& rig, const Derived& derived, const DerivedStay& stay);

/// What is said of something that passed or could not be checked. A remark is made into words when these
/// are asked for: two sides of a boat mostly have the same remarks, which tells that they are alike.
class Saying {
public:
  Saying(const Rig& rig, std::string words) : rig_(&rig), words_(std::move(words)) {}
  Saying(const Rig& rig, Remark remark) : rig_(&rig), remark_(std::move(remark)) {}

  /// Empty when only the words are there.
  const Remark& remark() const { return remark_; }
  const std::string& words() const {
    if (!words_)
      words_ = say(*rig_, remark_);
    return *words_;
  }
  bool same_remark(const Saying& other) const { return !remark_.empty() && remark_ == other.remark_; }

  friend bool operator==(const Saying& a, const Saying& b) {
    return a.same_remark(b) || a.words() == b.words();
  }

private:
  const Rig* rig_;
  Remark remark_;
  mutable std::optional<std::string> words_;
};

/// What a check came to about one stay.
class StayReport {
public:
  explicit StayReport(const Rig& rig) : rig_(rig) {}

  void find(Diagnostic finding) { found_.push_back(std::move(finding)); }
  void find(DiagnosticBuilder&& builder) { found_.push_back(std::move(builder).build()); }
  /// The words do not name the stay: they are the same on both sides when the sides are alike.
  void pass(std::string words) { passed_.emplace_back(rig_, std::move(words)); }
  void pass(Remark remark) { passed_.emplace_back(rig_, std::move(remark)); }
  void not_checked(std::string words) { not_checked_.emplace_back(rig_, std::move(words)); }
  void not_checked(Remark remark) { not_checked_.emplace_back(rig_, std::move(remark)); }

  const std::vector<Diagnostic>& found() const { return found_; }
  const std::vector<Saying>& passed() const { return passed_; }
  const std::vector<Saying>& unchecked() const { return not_checked_; }

private:
  const Rig& rig_;
  std::vector<Diagnostic> found_;
  std::vector<Saying> passed_;
  std::vector<Saying> not_checked_;
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
