#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What is to be read on a piece years later, at one of its ends.
struct PieceLabel {
  std::string stay; ///< "cap-shroud PORT", "backstay, piece 2 of 3"
  std::string end;  ///< "END ALOFT: thimble-16"
  std::string boat;
  std::string line; ///< "hmpe-9: 12-strand HMPE heat-set, 9 mm"
  // Empty: not stated, to be written by hand.
  std::string length; ///< "cut 12998 mm, bearing to bearing 11283 mm"; empty while it is a draft
  std::string made;   ///< ISO 8601
  std::string job;
  std::string batch;
  std::string made_by;
};

/// Two for each piece, that aloft first, in the order of the rig.
std::vector<PieceLabel> piece_labels(const CheckedRig& checked);

} // namespace sheerpole
