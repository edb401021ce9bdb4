#pragma once

#include "plugins/emergency-splice-card/spare_line.hpp"

#include <string>
#include <vector>

namespace sheerpole {

std::vector<std::string> rope_at_home(const SpareLine& spare);
std::vector<std::string> rope_aboard(const SpareLine& spare);
std::vector<std::string> wire_at_home(const SpareLine& spare);
std::vector<std::string> wire_aboard(const SpareLine& spare);

/// A part of the file that takes the wire of the spare length; empty texts: not stated.
struct SpareTerminal {
  std::string name;
  std::string wire; ///< size and construction that it is made for
  std::string inserted;
  std::string thread;
  std::string in_hand;
};

/// Those whose wire socket is stated for this size of wire, in the order of the file.
std::vector<SpareTerminal> spare_terminals(const SpareLine& spare);

} // namespace sheerpole
