#pragma once

#include "calculate/joints/joint.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// What an end says of one of its dimensions; null when it says nothing.
inline const EndDimension* stated(const End& end, std::string_view name) {
  return end.find(name);
}

/// Two numbers that are written in different units, or worked out, are the same within this.
inline constexpr Length a_hair = Length::millimetres(0.001);

/// Where the comparisons at one joint are written.
class JointComparison {
public:
  JointComparison(const Rig& rig, Joint& joint) : rig_(rig), stay_(rig[joint.stay]), joint_(joint) {}

  const Rig& rig() const { return rig_; }
  const Stay& stay() const { return stay_; }
  const Joint& joint() const { return joint_; }

  void add(std::string slug, JointResult result, std::string words,
           std::optional<Length> play = std::nullopt);
  void missing(std::string slug, const std::string& what);
  void switched_off(std::string slug, Limit limit);
  /// Found below the usual; the least in use is said with it.
  void add_ratio(std::string slug, double ratio, Limit usual_limit, Limit least_limit, std::string words);

  static JointResult result(bool good) { return good ? JointResult::pass : JointResult::finding; }
  /// A threshold as a plain number, two decimals at most: "1.5".
  static std::string trimmed(double value);

private:
  const Rig& rig_;
  const Stay& stay_;
  Joint& joint_;
};

/// What the two ends of a joint ask for, each in the file of its name. Sources: geometry; the thresholds of
/// model/limits.hpp; the tables of split_pin.hpp.
void compare_jaw(JointComparison& comparison, const End& jaw, const End& eye);
void compare_thread(JointComparison& comparison, const End& stud, const End& socket);
void compare_hook(JointComparison& comparison, const End& hook, const End& eye);
void compare_tee(JointComparison& comparison, const End& tee, const End& slot);
/// The end of a part against the line that is made fast to it.
void compare_line(JointComparison& comparison, const End& end);

/// Compares the two ends of a joint, or an end with the line: every comparison that the two types of end
/// ask for, passed, found wanting or not checked because a dimension is missing. What is in the joint (a
/// bush) counts. Sources: geometry; the thresholds of model/limits.hpp.
void compare_joint(const Rig& rig, Joint& joint);

} // namespace sheerpole
