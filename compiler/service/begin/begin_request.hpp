#pragma once

#include "base/result.hpp"
#include "service/begin/first_rig.hpp"

#include <map>
#include <string>
#include <string_view>

namespace sheerpole::service {

/// What a first file is asked for with, as words.
struct BeginRequest {
  std::string rig;      ///< one of rig_starts()
  std::string line;     ///< "wire" or "rope"
  std::string measured; ///< "cord", "tape" or "drawing"
  std::string name;     ///< of the boat
  std::string unit;     ///< of her bench cards: "millimetres" or "inches"
  /// As written, "12.5 m", those that the rig asks for; what is not there is as in her example.
  std::map<std::string, std::string> numbers = {};
};

/// A first file and what it may be called.
struct BegunFile {
  std::string file; ///< "my-boat.rig": letters a to z, digits and hyphens
  std::string text;
};

/// The text of a first rig file, or in a sentence why there is none: a word that is not known, a number
/// that is no length or that the rig does not ask for, a name that does not show, or what the compiler
/// finds wrong. With inches the file has a shop that works in them.
Result<BegunFile, std::string> begin_file(const BeginRequest& request);

/// Whether the text is a length with its unit, longer than nothing.
bool is_first_length(std::string_view text);

} // namespace sheerpole::service
