#pragma once

#include <map>
#include <string>
#include <vector>

namespace sheerpole {

/// What differs between a folder and its list of sums.
struct SealFaults {
  std::vector<std::string> altered; ///< their sum is another
  std::vector<std::string> missing;
  std::vector<std::string> extra;     ///< on no list
  std::vector<std::string> bad_lines; ///< of the list, that are no sum and name

  bool none() const { return altered.empty() && missing.empty() && extra.empty() && bad_lines.empty(); }
};

/// One line of the list: the name and its sum.
using SealSums = std::map<std::string, std::string>;

/// Reads "64 hexadecimal digits, two blanks, a name" a line. Names that lead out of the folder are bad
/// lines.
SealSums read_sums(const std::string& list, std::vector<std::string>& bad_lines);

/// `found` holds every file of the folder but the list itself: its name and its sum.
SealFaults compare_with_sums(const SealSums& sums, const SealSums& found);

} // namespace sheerpole
