#pragma once

#include "model/remark.hpp"
#include "model/rig.hpp"

#include <functional>
#include <vector>

namespace sheerpole {

struct Derived;

/// Who reads how well a cut is known. What papers alone say is most of the work: for checks no draws are
/// made, and what has no bound is not looked for; both stay zero and empty.
enum class DoubtFor { papers, checks };

/// Works out what decides the length of one finished stay in a rig that is changed for a trial: the cut of
/// the piece that takes what the others leave, without what is only marked off on it.
using CutOf = std::function<Length(const Rig&, StayId)>;

/// How well the cut of every stay is known: from the bounds that the file states, the scatter of repeated
/// readings and the error of the tapes. Each stay is worked out again with each of its inputs moved both
/// ways by its bound, and with two moved at once where that makes a difference of 0.01 mm; what the file
/// states once is one input, and moves everything that rests on it. Fills Derived::inputs, Derived::draws,
/// Derived::seed and DerivedStay::uncertainty of the stays for which any bound is stated. With very many
/// stays fewer draws are made, so that all of them together are 40 million; Derived::draws says how many.
/// 0 threads: as many as there are processors.
void add_uncertainty(const Rig& rig, const CutOf& cut_of, Derived& derived, unsigned threads = 0,
                     DoubtFor reader = DoubtFor::papers);

/// One number on which the lengths of a stay may rest, in a rig that may be changed for a trial.
struct StayField {
  Remark name;                     ///< "length of toggle-12"
  const Influences* influences;    ///< of the rig that the field belongs to
  bool bounded = false;            ///< a bound is stated, be it nothing
  double value = 0.0;              ///< as stated; coherent SI unit
  double step = 0.0;               ///< a small change of it, to see whether a length follows
  std::function<void(double)> set; ///< puts another value in its place
  const void* what = nullptr;      ///< of the rig that the field belongs to: where the value is kept
};

/// Every number from which pin-to-pin, body and cut of a stay are worked out, each once however often it is
/// used. The rig must outlive the fields and keep its vectors as they are.
std::vector<StayField> stay_fields(Rig& rig, StayId stay);

} // namespace sheerpole
