#pragma once

#include "calculate/strength/transverse_loads.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "units/dimension.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A method by which a rig is screened from its righting moment.
enum class ScreeningMethod { righting_moment_share, joint_equilibrium };

/// "righting-moment-share", "joint-equilibrium".
std::string_view name_of(ScreeningMethod method);
/// Where the method is from.
Remark publication_of(ScreeningMethod method);

/// One number of a screening.
struct ScreeningNumber {
  Remark name; ///< "righting moment", "tension of cap-shroud below upper-tip"
  Quantity value;
  Remark how;            ///< of a result: what it is made of
  Provenance provenance; ///< of an input
};

/// The part of a mast between two places that are held sideways.
struct MastPanel {
  Remark name; ///< "mast, heel to lower-root"
  Length length;
  Force compression;
};

/// What one `load-screening` came to. It screens and does not size a rig.
struct LoadScreening {
  ScreeningMethod method = ScreeningMethod::righting_moment_share;
  std::string of;                       ///< "cap-shroud"; one side of it where the sides differ
  std::vector<StayId> stays;            ///< one or both sides
  std::vector<ScreeningNumber> inputs;  ///< every number and factor taken
  std::vector<ScreeningNumber> results; ///< empty when there is a reason in `not_checked`
  std::vector<Remark> not_checked;      ///< what is not stated, or why the method does not hold
  std::vector<Remark> notes;            ///< what was taken for granted, and what was stated and not used
  std::optional<TransverseEquilibrium> equilibrium; ///< of joint-equilibrium
  std::string spar;              ///< of joint-equilibrium: the mast; empty when no point names it
  std::vector<MastPanel> panels; ///< of that mast, the lowest first
  Span place;
};

/// All of the rig, in the order of the file; sides that come out alike are one. Methods:
///
/// righting-moment-share: P = load-factor RM30 / half beam, shroud = share P, asked break load =
/// break-factor x shroud. Source: F. S. Kinney, Skene's Elements of Yacht Design, as worked in B. Toss, The
/// Complete Rigger's Apprentice, fig. 5-25 (read in worked examples; shroud_load_share.hpp). The righting
/// moment is that of the boat when it is stated at 30 degrees, the half beam that of the chainplate, the
/// load factor 1.5, unless the record says otherwise.
///
/// joint-equilibrium: exact statics of the joints in a plane across the boat (transverse_equilibrium.hpp)
/// under one side force at the top of the shroud, as stated or RM over its height above the waterline.
/// Spreaders that are swept, shrouds that lead fore or aft and lines that miss what the formula needs make
/// it not checked.
std::vector<LoadScreening> load_screenings(const Rig& rig);

} // namespace sheerpole
