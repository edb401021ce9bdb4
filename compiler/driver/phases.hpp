#pragma once

#include "service/compile.hpp"

#include <span>
#include <string>
#include <string_view>

namespace sheerpole {

/// A step of the work, whose result can be shown as text.
struct Phase {
  std::string_view name; ///< the word after `--print`
  std::string_view help;
  /// What it handed on; empty when an error kept it from running.
  std::string (*print)(const Compilation& compilation);
};

/// All, in the order in which they run.
std::span<const Phase> phases();

/// What the phase of this name handed on.
std::string print_phase(const Compilation& compilation, std::string_view name);

} // namespace sheerpole
