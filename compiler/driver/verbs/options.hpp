#pragma once

#include "backend/page/paper.hpp"
#include "diagnostics/render.hpp"
#include "driver/command_line.hpp"
#include "driver/outside/outside_backends.hpp"
#include "service/compile.hpp"

#include <CLI/CLI.hpp>

#include <memory>
#include <string>
#include <vector>

// Options that several verbs have, each said once.
namespace sheerpole {

/// The options of a verb, kept as long as the verb is. `run` is what is asked for when it stands on the
/// command line.
template <class Options>
Options& options_of(CLI::App& verb, AskedFor& asked, int (*run)(const Options&)) {
  auto options = std::make_shared<Options>();
  verb.callback([options, run, &asked] { asked = [options, run] { return run(*options); }; });
  return *options;
}

/// `a, b, c`, for help texts.
std::string choices(const std::vector<std::string>& words);

/// `--set`, `--as-of`, `--shop` and `--allow-folder`.
void add_rig_options(CLI::App& verb, CompileOptions& rig);
/// An option that names a layer of the rig.
void add_as_of(CLI::App& verb, std::string& layer, const std::string& option, const std::string& help);
void add_shop(CLI::App& verb, CompileOptions& rig);
void add_allowed_folders(CLI::App& verb, CompileOptions& rig);

/// `--form`, how findings are shown: text, lines, json, sarif, junit or code-quality.
void add_findings_form(CLI::App& verb, std::string& form);

/// `--color`: auto, always or never; what it says holds for the whole run.
void add_colour(CLI::App& verb);

/// `--form`, how a table is shown: text, csv or json.
void add_table_form(CLI::App& verb, std::string& form);

/// `--fail-on`: error, warning or note.
void add_fail_on(CLI::App& verb, std::string& severity);

/// What a check ends with: `exit_errors` from the first finding of that severity on, waived ones apart.
int code_for(const SeverityCounts& counts, std::string_view fail_on);

/// `--only`: names of back ends; empty means the usual ones. `example` is for the help.
CLI::Option* add_only(CLI::App& verb, std::vector<std::string>& only, const std::string& example);

/// How papers are made to be printed.
struct PaperOptions {
  bool pdf = false;         ///< as PDF as well
  std::string paper = "a4"; ///< or "letter"
  PaperSize size() const { return paper == "letter" ? PaperSize::letter : PaperSize::a4; }
};

/// `--pdf` and `--paper`; `needed` is an option without which they mean nothing, or nullptr.
void add_papers(CLI::App& verb, PaperOptions& papers, const std::string& pdf_help = "papers as PDF as well",
                CLI::Option* needed = nullptr);

/// `--page`: the offline page, where it is neither beside the program nor installed.
void add_page_file(CLI::App& verb, std::string& page);

/// `--workers`; 0 when it is not given.
void add_workers(CLI::App& verb, unsigned& workers);

/// `--outside` and `--outside-seconds`.
void add_outside(CLI::App& verb, OutsideOptions& outside);

/// Holds what the command works on until the process is gone. Taking a rig down piece by piece is work that
/// nobody sees the result of; what was opened and printed is closed and written elsewhere.
template <class Value>
const Value& until_the_end(Value value) {
  struct Held {
    Value value;
    const Held* before;
  };
  // So that whoever looks for memory that was lost finds it, also where one process runs several commands.
  static const Held* last = nullptr;
  last = new Held{std::move(value), last};
  return last->value;
}

} // namespace sheerpole
