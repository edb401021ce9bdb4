#pragma once

#include "backend/page/paper_files.hpp"
#include "model/side.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What is to be read on a piece years later, at one of its ends.
struct PieceLabel {
  std::string stay; ///< "cap-shroud", "backstay, piece 2 of 3"
  Side side = Side::centre;
  std::string end; ///< "ALOFT", "BELOW"
  std::string to;  ///< what the end is made fast to, and its part: "to the cap tang, port: thimble-16"
  std::string boat;
  std::string state_of_rig = {}; ///< "rev B, rig c86b17f0"
  std::string code = {}; ///< what the QR code says: boat, piece, cut, revision and digest of the rig
  std::string line;      ///< "hmpe-9: 12-strand HMPE heat-set, 9 mm"
  // Empty: not stated, to be written by hand.
  std::string length; ///< "cut 12998 mm, body 11283 mm"; empty of a draft
  std::string made;   ///< ISO 8601
  std::string job;
  std::string batch;
  std::string made_by;
  std::string state = {}; ///< "MEASURED ONCE", "FROM DRAWING"
  std::string waits =
      {}; ///< of a draft, in place of a length: "NOT YET: cut nothing, it waits for 2 reasons"
};

/// Two for each piece, that aloft first, in the order of the rig.
std::vector<PieceLabel> piece_labels(const CheckedRig& checked);

/// One label, millimetres. Two beside each other and six below each other fit between the margins of either
/// sheet.
inline constexpr double label_width = 90.0;
inline constexpr double label_height_on_sheet = 40.0;
inline constexpr int labels_beside = 2;
inline constexpr int labels_below = 6;

/// The labels in a grid, row by row, with dashed lines to cut along.
std::vector<Drawing> label_pages(const std::vector<PieceLabel>& labels, const std::string& boat,
                                 const std::string& identity, PaperSize size);

/// A sheet of labels to cut apart, one for each end of each piece.
struct Labels final : PagesBackend {
  Labels();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
