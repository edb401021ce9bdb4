#pragma once

#include "service/compile.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

void print_out(std::string_view text);
void print_error(std::string_view text);
/// The same for a text of which parts come from files: each line is made fit to print.
void print_lines(std::string_view text);

/// To be called before anything is opened. A standard stream that was closed by whoever started us is held
/// by a file that takes nothing: else the next paper would be opened in its place and what is said would be
/// written into it. A reader who goes away does not end us either: papers are written all the same.
void hold_standard_streams();

/// To be called last. Whether all that was printed could be written; when not, says so, and `code` becomes
/// that of a folder that can not be written to.
int finish_printing(int code);

/// Says what is being done, on the error stream and only when that is a terminal.
void print_progress(std::string_view text);

/// What `--color` says: "auto", "always" or "never".
void wish_for_colour(const std::string& when);

/// Unless `--color` says otherwise colours are for terminals, and not where NO_COLOR is set or TERM is
/// dumb.
bool out_has_colour();
bool error_has_colour();

/// What the command returns to the shell.
enum ExitCode : int {
  exit_clean = 0,  ///< no finding of severity error
  exit_errors = 1, ///< at least one
  exit_usage = 2,  ///< the command line, or a folder that can not be written to
  exit_fault = 3   ///< a fault of the compiler or of a back end
};

/// Findings in the form asked for: text, lines, json, sarif, junit or code-quality. What names the rig file
/// or says what fails a check is for the last two.
std::string show_findings(const Compilation& compilation, const std::string& form, bool colour,
                          const std::string& rig_file = {}, const std::string& fail_on = "error");

} // namespace sheerpole
