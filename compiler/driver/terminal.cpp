#include "driver/terminal.hpp"

#include "backend/paper_words.hpp"
#include "diagnostics/render.hpp"

#include <cstdio>
#include <cstdlib>
#include <unistd.h>

namespace sheerpole {

namespace {

void print(std::FILE* stream, std::string_view text) {
  std::fwrite(text.data(), 1, text.size(), stream);
}

bool colour(int descriptor) {
  const char* no_colour = std::getenv("NO_COLOR");
  return isatty(descriptor) != 0 && (no_colour == nullptr || *no_colour == '\0');
}

} // namespace

void print_out(std::string_view text) {
  print(stdout, text);
}

void print_error(std::string_view text) {
  std::fflush(stdout); // the two streams may be one terminal; keep the order
  print(stderr, text);
}

void print_progress(std::string_view text) {
  if (isatty(STDERR_FILENO) != 0)
    print_error(text);
}

bool out_has_colour() {
  return colour(STDOUT_FILENO);
}

bool error_has_colour() {
  return colour(STDERR_FILENO);
}

std::string show_findings(const Compilation& compilation, const std::string& form, bool colour) {
  std::optional<CheckTotals> totals;
  if (compilation.derived) // else it did not come to the checks
    totals = count_results(compilation.results);
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
