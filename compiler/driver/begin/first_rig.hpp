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

/// Declarations of the parts that first files use until the owner's own take their place: first-tang,
/// first-plate, first-eye, first-screw, first-wire. Every length is assumed; round figures of the project,
/// no source.
std::string_view first_parts();

/// A text as it stands between the quotes of a rig file; line ends are left out.
inline std::string escaped(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '"' || c == '\\')
      result += '\\';
    if (c != '\n' && c != '\r')
      result += c;
  }
  return result;
}

} // namespace sheerpole
