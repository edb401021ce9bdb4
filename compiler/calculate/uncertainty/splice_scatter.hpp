#pragma once

#include "calculate/cut/contraction.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <map>
#include <set>
#include <vector>

namespace sheerpole {

/// The splices of one stay on one rope that its test splices speak of.
struct BuriesOnRope {
  MaterialId rope;
  double sum = 0.0; ///< of the burys, metres
  double squares = 0.0;
  std::vector<const Splice*> splices;
  TestSplices tests;    ///< those of the splice of which least is known
  bool by_rule = false; ///< one of them goes by the rule of the first creep

  /// Standard uncertainty of what the splices take, as a share of all their burys together: the mean of n
  /// tests is off by s / sqrt(n) for all of them, and each splice differs from the mean by s for itself.
  /// One input with the freedom of s, since both rest on the same s. Nothing when the scatter is not known.
  /// Source: JCGM 100:2008, 4.2.3 and 5.1.2.
  double standard() const;
};

/// By rope, in the order of the stack.
std::vector<BuriesOnRope> buries_of(const Rig& rig, StayId stay);

/// How numbers of a trial rig follow the scatter, by where they are kept, for one standard uncertainty:
/// with the marks of every test moved by the same share of its bury their mean moves by it. Where the
/// splice states a measured share, that moves.
std::map<const void*, double> follow_scatter(Rig& trial, const Rig& rig, const BuriesOnRope& buries);

/// What the scatter of the test splices holds already, by where it is kept: a mark that is off differs from
/// test to test.
std::set<const void*> held_by_scatter(Rig& trial, const Rig& rig, StayId stay);

/// What nobody knows of the splices of a stay: by how much the next one differs from a single test splice,
/// whether the first creep does what the rule says.
std::vector<Remark> unknown_of_splices(const Rig& rig, StayId stay);

} // namespace sheerpole
