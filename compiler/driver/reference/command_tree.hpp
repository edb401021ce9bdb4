#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// A word that a command takes: an option, or what stands by itself.
struct CommandOption {
  std::vector<std::string> names; ///< `-h`, `--help`; empty of what stands by itself
  std::string value;              ///< what stands behind it, `FILE`; empty of a switch
  std::string help;
  std::vector<std::string> choices; ///< the words that it takes, where there is a list of them
  bool needed = false;
  bool several = false; ///< may be given more than once, or with several values

  /// Whether a file or a folder is meant.
  bool takes_path() const;
};

struct Command {
  std::string name; ///< `check`; of the program itself empty
  std::string help;
  std::vector<CommandOption> given;   ///< what stands by itself, in order
  std::vector<CommandOption> options; ///< with those of help
  std::string cautions;               ///< of the program itself: what its help ends with, in one line
};

/// The program and then its verbs in the order of the help, from the command line that it reads itself.
std::vector<Command> command_tree();

/// docs/commands: README.md with all that the command line takes; man/ with a page of the manual for the
/// program and for each verb; completions/ for bash, zsh and fish.
std::vector<OutputFile> command_pages();

/// What `completions/` holds.
std::vector<OutputFile> completions(const std::vector<Command>& commands);

} // namespace sheerpole
