#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The few numbers of which a first rig file is made, each as it was written: "12.5 m".
struct FirstNumbers {
  std::string boat = "My boat";
  std::string rig = "masthead-sloop"; ///< one of first_rigs()
  std::string mast_height;            ///< masthead above the waterline
  std::string beam;
  std::string base; ///< from the mast to the stem fitting
};

/// The kinds of rig of which a first file can be made.
const std::vector<std::string_view>& first_rigs();

/// A rig file that compiles and whose every cut is a draft: the numbers given and usual proportions, each
/// marked `assumed` with what to measure in its place. The proportions are guesses of the project, no
/// source.
std::string first_rig(const FirstNumbers& numbers);

} // namespace sheerpole
