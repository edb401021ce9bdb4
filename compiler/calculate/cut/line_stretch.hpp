#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// What the line itself does between the bench and the boat.
struct LineStretch {
  std::vector<Term> terms;
  std::vector<MissingInput> missing;
  std::vector<Remark> not_counted; ///< what is left out because the file says nothing of it
};

/// Elastic stretch between the bench tension and the dock tension, taken off the body: with e = (T dock - T
/// bench) / EA the line is cut for body / (1 + e). First lasting stretch b likewise when the stay says
/// `bedding-from: cut`. Nothing is counted when neither tension is stated; one without the other, or no
/// stiffness, is missing. Of a length X the expected one is taken, the stated estimate of which is an
/// assumption.
/// Source: Hooke's law; the form of W = standing / ((1 + e)(1 + b)) is statics of an even line.
LineStretch line_stretch(const Rig& rig, const Stay& stay, const LineMaterial& material,
                         const LengthSum& body);

} // namespace sheerpole
