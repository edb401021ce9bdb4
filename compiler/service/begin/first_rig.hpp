#pragma once

#include "service/begin/starts.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// How the lengths of a boat will be known.
enum class FirstMeasure : std::uint8_t {
  cord,   ///< a messenger cord with a knot for each stay: a length is X
  tape,   ///< a reading of each stay and side
  drawing ///< the points of its path
};

/// A number that a first file is made to: what it is called on the command line and in the file.
struct AskedNumber {
  std::string_view name; ///< "mast-height": `--mast-height`, `let mast-height`
  std::string_view help; ///< for the command line
  std::string_view
      what; ///< for the file: "masthead above the waterline"; `{}` is the name of her other mast
};

/// All that any rig asks for, in the order of the file.
const std::vector<AskedNumber>& asked_numbers();

/// Of what a first file is made.
struct FirstNumbers {
  std::string boat = "My boat";
  std::string rig = "masthead-sloop"; ///< one of rig_starts()
  FirstLine line = FirstLine::wire;
  FirstMeasure measured_by = FirstMeasure::drawing;
  bool inches = false; ///< her bench cards are in inches, by a shop of the file; else in millimetres
  std::map<std::string, std::string, std::less<>>
      numbers; ///< those that the rig asks for, as written: "12.5 m"
};

/// A rig file that compiles, is tidy, and of which every cut is a draft: the numbers given and usual
/// proportions, each marked `assumed` with what to measure in its place. The proportions are guesses of
/// the project, no source. Measured by tape, each reading holds the length that the points give.
std::string first_rig(const FirstNumbers& numbers);

/// The head of a file: what it is, and what is to be done, numbered.
std::string first_head(const std::string& what, const std::vector<std::string>& todo);

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
