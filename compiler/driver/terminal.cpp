#include "driver/terminal.hpp"

#include "backend/paper_words.hpp"
#include "diagnostics/excerpt.hpp"
#include "diagnostics/render.hpp"

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <system_error>
#include <unistd.h>

namespace sheerpole {

namespace {

/// Why something that was to be printed was not, as `errno` numbers it; 0 when all was.
int reason_not_printed = 0;

void note(bool done) {
  if (!done && reason_not_printed == 0)
    reason_not_printed = errno;
}

std::string colour_wished = "auto"; ///< before any thread is started

bool colour(int descriptor) {
  if (colour_wished != "auto")
    return colour_wished == "always";
  const char* no_colour = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  return isatty(descriptor) != 0 && (no_colour == nullptr || *no_colour == '\0') &&
         (terminal == nullptr || terminal != std::string_view("dumb"));
}

} // namespace

void print_out(std::string_view text) {
  note(std::fwrite(text.data(), 1, text.size(), stdout) == text.size());
}

void print_lines(std::string_view text) {
  std::string lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    const bool returns = line.ends_with('\r'); // the line end of tables, RFC 4180
    line.remove_suffix(returns ? 1 : 0);
    lines += printable(line) + (returns ? "\r" : "") + (end < text.size() ? "\n" : "");
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  print_out(lines);
}

void print_error(std::string_view text) {
  note(std::fflush(stdout) == 0); // the two streams may be one terminal; keep the order
  std::fwrite(text.data(), 1, text.size(), stderr);
}

void hold_standard_streams() {
  std::signal(SIGPIPE, SIG_IGN);
  for (const int number : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
    if (fcntl(number, F_GETFD) < 0 && errno == EBADF)
      open("/dev/null",
           number == STDIN_FILENO ? O_WRONLY : O_RDONLY); // takes the lowest number, which is this
}

int finish_printing(int code) {
  note(std::fflush(stdout) == 0);
  if (reason_not_printed == 0)
    return code;
  print_error("sheerpole: not all of the output could be written: " +
              std::generic_category().message(reason_not_printed) + "\n");
  return std::max<int>(code, exit_usage);
}

void print_progress(std::string_view text) {
  if (isatty(STDERR_FILENO) != 0)
    print_error(text);
}

void wish_for_colour(const std::string& when) {
  colour_wished = when;
}

bool out_has_colour() {
  return colour(STDOUT_FILENO);
}

bool error_has_colour() {
  return colour(STDERR_FILENO);
}

std::string show_findings(const Compilation& compilation, const std::string& form, bool colour,
                          const std::string& rig_file, const std::string& fail_on) {
  if (form == "code-quality")
    return render_code_quality(compilation.findings, *compilation.sources, rig_file);
  if (form == "junit")
    return std::string(junit_begins) +
           render_junit_suite(compilation.findings, *compilation.sources, compilation.results->all,
                              plain_path(rig_file),
                              fail_on == "note"      ? Severity::note
                              : fail_on == "warning" ? Severity::warning
                                                     : Severity::error) +
           std::string(junit_ends);
  std::optional<CheckTotals> totals;
  if (compilation.derived) // else it did not come to the checks
    totals = count_results(*compilation.results);
  if (form == "json")
    return render_json(compilation.findings, *compilation.sources, totals);
  if (form == "sarif")
    return render_sarif(compilation.findings, *compilation.sources, totals);
  if (form == "lines")
    return render_lines(compilation.findings, *compilation.sources);
  std::string text = render_terminal(compilation.findings, *compilation.sources, colour, totals);
  if (compilation.checked)
    if (const std::string states = states_of_pieces(*compilation.checked); !states.empty())
      text += "pieces: " + states + "\n";
  return text;
}

} // namespace sheerpole
