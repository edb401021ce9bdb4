#pragma once

#include "calculate/joints/joint.hpp"
#include "calculate/joints/joint_phrases.hpp"
#include "model/rig.hpp"
#include "units/named_size.hpp"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// Two numbers that are written in different units, or worked out, are the same within this.
inline constexpr Length a_hair = Length::millimetres(0.001);

/// A dimension of each of two ends, or two of one; null what is not stated.
struct TwoDimensions {
  const EndDimension* one = nullptr;
  const EndDimension* other = nullptr;

  explicit operator bool() const { return one != nullptr && other != nullptr; }
  Length first() const { return one->length.value; }
  Length second() const { return other->length.value; }
};

/// Where the comparisons at one joint are written.
class JointComparison {
public:
  JointComparison(const Rig& rig, Joint& joint) : rig_(rig), stay_(rig[joint.stay]), joint_(joint) {}

  const Rig& rig() const { return rig_; }
  const Stay& stay() const { return stay_; }
  const Joint& joint() const { return joint_; }

  void add(JointFinding finding, JointResult result, Remark words,
           std::optional<Length> play = std::nullopt);
  /// Finds it wanting unless `good`.
  void add(JointFinding finding, bool good, Remark words, std::optional<Length> play = std::nullopt);
  /// This dimension of the end is not stated.
  void missing(JointFinding finding, const End& end, EndDimensionName dimension);
  void switched_off(JointFinding finding, Limit limit);
  /// Found below the usual; the least in use is said with it.
  void add_ratio(JointFinding finding, double ratio, Limit usual_limit, Limit least_limit, Remark words);

  /// Both dimensions; of each of the findings it is said which is not stated, the first of them.
  TwoDimensions both(std::initializer_list<JointFinding> findings, const End& one,
                     EndDimensionName dimension, const End& other, EndDimensionName other_dimension);

private:
  const Rig& rig_;
  const Stay& stay_;
  Joint& joint_;
};

/// "a jaw", "an eye"
OneOf one_of(EndType type);

/// The size that a dimension names; nothing when it names none.
std::optional<NamedSize> named_size(const EndDimension& dimension);

/// The split pin that a standard gives to a clevis pin.
struct SplitPin {
  Length diameter;      ///< nominal: that of the hole in a metric pin
  std::string name;     ///< "3.2 mm", "1/8 in"
  std::string standard; ///< "ISO 1234", "ASME B18.8.1"
};

/// By the diameter of the clevis pin: for a metric pin over 2 to 44 mm from the table of ISO 1234, whose
/// ranges reach from over one bound up to and with the next; for an inch pin of 3/16 to 1 in from that of
/// ASME B18.8.1-1994. Nothing for a pin that is not in its table. Sources: IS 549, which is equal to ISO
/// 1234; ASME B18.8.1-1994.
std::optional<SplitPin> split_pin_for(const NamedSize& clevis_pin);

/// What the two ends of a joint ask for. Sources: geometry; the thresholds of model/limits.hpp; the tables
/// of split_pin_for().
void compare_jaw(JointComparison& comparison, const End& jaw, const End& eye);
/// A pin that lies in the joint in its own right, in the hole of one of two eyes.
void compare_own_pin(JointComparison& comparison, const End& eye);
/// The same against the pin that the jaw is made for.
void compare_pin_in_jaw(JointComparison& comparison, const JointPin& pin);
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
