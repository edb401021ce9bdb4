#pragma once

#include "driver/find/sought.hpp"
#include "model/rig.hpp"
#include "source/source_set.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One thing that was found, as text.
struct FoundRow {
  std::string boat; ///< her title; may be empty
  std::string stay; ///< without its side
  std::string side;
  std::string item;    ///< name of the part, line or splice; of the stay itself: empty
  int count = 1;       ///< so many of it one behind the other
  std::string matched; ///< what of it: "name", "pin of its lower end", "installed"
  std::string value;   ///< what is stated there
  std::string source;  ///< how the value is known; empty where only a name is meant
  std::string place;   ///< "parts/hardware.rig:12"
};

struct FoundInRig {
  std::vector<FoundRow> rows; ///< in the order of the stays, of each from aloft to deck
  std::size_t stays = 0;
  /// Stays of which nothing says how old they are: neither made nor installed, and of their line neither.
  std::size_t undated = 0;
};

/// Looks through every stay: at the stay itself, its line, and the parts and splices in its stack. What is
/// declared and hangs in no stay is not on the boat and not found.
FoundInRig find_in_rig(const Sought& sought, const Rig& rig, const SourceSet& sources);

} // namespace sheerpole
