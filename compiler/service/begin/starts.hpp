#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

// What first files are made of. The texts lie in the folder starts and are built in; see starts/README.md.
namespace sheerpole {

/// A file of the folder starts: its name below it, "rigs/ketch", and all that is in it.
struct StartText {
  std::string_view name;
  std::string_view text;
};

/// All files of the folder; made by the build.
std::span<const StartText> start_texts();

/// Line of a stay: wire or rope; the words of the command line.
enum class FirstLine { wire, rope };

/// A kind of rig of which a first file can be made.
struct RigStart {
  std::string name;  ///< "masthead-sloop"
  std::string title; ///< "Masthead sloop"
  std::string about; ///< what she is, in a few sentences
  std::string measure_first;
  std::string second_mast;                    ///< what her other mast is called; empty: she has none
  std::vector<std::string> asks;              ///< the numbers that it takes: "mast-height"
  std::map<std::string, std::string> example; ///< of each of them, for the pages and the tests
  std::string rope_blocks;                    ///< those that stand in a file of rope alone
  std::string blocks;                         ///< of a rig file, those of its pieces first
};

/// All of them, by the alphabet.
const std::vector<RigStart>& rig_starts();

/// Their names, without reading what is in them.
std::vector<std::string> rig_start_names();

/// The one of this name; a fault of the compiler where there is none.
const RigStart& rig_start(std::string_view name);

/// What a stay is made of from aloft to deck, `made` being "toggle, screw, plate".
std::vector<std::string> stack_of(std::string_view made, FirstLine line);

/// The declarations of the parts that these items of stacks name, and of those that they need, in the
/// order of the file, with a blank line between them.
std::string hardware_of(const std::vector<std::string>& items, FirstLine line);

/// What is said of a way of measuring, a paragraph each: `way` is "cord", "tape", "drawing" or "nothing",
/// `part` "todo" or "page".
std::vector<std::string> way_words(std::string_view way, std::string_view part);

} // namespace sheerpole
