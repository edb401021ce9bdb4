#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <span>
#include <vector>

namespace sheerpole {

/// What the line itself does between the bench and the boat.
struct LineStretch {
  std::vector<Term> terms;
  std::vector<MissingInput> missing;
  std::vector<Remark> not_counted; ///< what is left out because the file says nothing of it
};

/// What of a piece is spliced at one end: two ropes lie in one there.
struct SplicedPart {
  Length buried;
  std::optional<Sourced<double>> stretch_share; ///< of what plain rope stretches; nothing: not stated
};

/// Elastic stretch between the bench tension and the dock tension, taken off the body: with e = (T dock - T
/// bench) / EA the line is cut for body / (1 + e). First lasting stretch b likewise when the stay says
/// `bedding-from: cut`. Nothing is counted when neither tension is stated; one without the other, or no
/// stiffness, is missing. Of a length X the expected one is taken, the stated estimate of which is an
/// assumption. A buried part that stretches the share s as much takes e s, which gives the cut back
/// bury (e / (1 + e) - e s / (1 + e s)); where s is not stated, what it would be at one half is told when
/// it comes to half a millimetre. Source: Hooke's law; the form of W = standing / ((1 + e)(1 + b)) is
/// statics of an even line.
LineStretch line_stretch(const Rig& rig, const Stay& stay, const LineMaterial& material,
                         const LengthSum& body, std::span<const SplicedPart> spliced = {});

} // namespace sheerpole
