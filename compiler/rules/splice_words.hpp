#pragma once

#include "calculate/cut/line_ends.hpp"
#include "rules/by_side.hpp"

#include <functional>
#include <string>

namespace sheerpole {

/// The bury in diameters of its rope, to the one decimal that is printed and compared: less than that is
/// lost between the tape and the rope's real diameter.
double bury_diameters(const SplicedEnd& end);
/// "72 d"
std::string diameters_text(double diameters);

/// "long-bury on hmpe-9"
std::string splice_name(const SplicedEnd& end);
/// "thimble-16 of hmpe-9"
std::string eye_name(const SplicedEnd& end);

using LookAtSplice = std::function<void(const SplicedEnd& end, const Stay& stay, const std::string& name,
                                        StayReport& report)>;

/// Looks at each splice of a stay that holds by its bury, once for each rope that it is made in.
void look_at_buries(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtSplice& look);
/// Looks at each spliced eye of a stay, once for each part and rope.
void look_at_eyes(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtSplice& look);

/// What the checks on the size of an eye say of it: of several causes the worst alone.
enum class EyeSize { fine, below_usual, angle_wide, too_short };
EyeSize eye_size(const Rig& rig, const EyeShape& shape);

/// Why the shape of an eye is not known.
std::string eye_not_known(const SplicedEnd& end);

} // namespace sheerpole
