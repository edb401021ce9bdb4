#include "driver/verbs/options.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/fleet/in_order.hpp"
#include "driver/terminal.hpp"
#include "kinds/kind_row.hpp"

#include <filesystem>

namespace sheerpole {

std::string choices(const std::vector<std::string>& words) {
  std::string result;
  for (const std::string& word : words)
    result += (result.empty() ? "" : ", ") + word;
  return result;
}

void add_rig_options(CLI::App& verb, CompileOptions& rig) {
  verb.add_option("--set", rig.settings,
                  "try another value for this run: --set \"toggle-12.length=90 mm\"; may be given again")
      ->type_name("NAME=VALUE")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  add_as_of(verb, rig.as_of, "--as-of", "without the layers after this one");
  add_shop(verb, rig);
  add_allowed_folders(verb, rig);
}

void add_as_of(CLI::App& verb, std::string& layer, const std::string& option, const std::string& help) {
  // The layers that a file may state, from the earliest.
  const auto& names = find_kind("layer")->name_choices;
  const std::vector<std::string> layers(names.begin(), names.end());
  verb.add_option(option, layer, help + ": " + choices(layers))
      ->check(CLI::IsMember(layers).description(""))
      ->type_name("LAYER");
}

void add_shop(CLI::App& verb, CompileOptions& rig) {
  verb.add_option("--shop", rig.shop,
                  "restate every length for the way this shop of the file delivers its screws")
      ->type_name("NAME");
}

void add_allowed_folders(CLI::App& verb, CompileOptions& rig) {
  verb.add_option("--allow-folder", rig.folders,
                  "a folder beside the rig file's own from which `use` may read; may be given again")
      ->check([](const std::string& folder) {
        std::error_code ignored;
        return std::filesystem::is_directory(folder, ignored) ? std::string()
                                                              : "there is no folder " + printable(folder);
      })
      ->type_name("FOLDER")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

void add_findings_form(CLI::App& verb, std::string& form) {
  verb.add_option("--form", form,
                  "how findings are shown: text, lines (one each), json, sarif, junit or code-quality")
      ->check(CLI::IsMember({"text", "lines", "json", "sarif", "junit", "code-quality"}))
      ->type_name("FORM");
}

void add_colour(CLI::App& verb) {
  verb.add_option_function<std::string>("--color", wish_for_colour,
                                        "colours in findings: auto unless said, which is on a terminal and "
                                        "where neither NO_COLOR nor TERM=dumb forbids it; always or never")
      ->check(CLI::IsMember({"auto", "always", "never"}))
      ->type_name("WHEN");
}

void add_table_form(CLI::App& verb, std::string& form) {
  verb.add_option("--form", form, "text, csv or json")
      ->check(CLI::IsMember({"text", "csv", "json"}))
      ->type_name("FORM");
}

void add_fail_on(CLI::App& verb, std::string& severity) {
  verb.add_option("--fail-on", severity,
                  "from what on the exit code is 1: error unless said, warning or note")
      ->check(CLI::IsMember({"error", "warning", "note"}))
      ->type_name("SEVERITY");
}

int code_for(const SeverityCounts& counts, std::string_view fail_on) {
  std::size_t failing = counts.errors;
  if (fail_on != "error")
    failing += counts.warnings;
  if (fail_on == "note")
    failing += counts.notes;
  return failing > 0 ? exit_errors : exit_clean;
}

CLI::Option* add_only(CLI::App& verb, std::vector<std::string>& only, const std::string& example) {
  return verb.add_option("--only", only, "make only these, with commas: " + example)
      ->delimiter(',')
      ->type_name("NAMES");
}

void add_papers(CLI::App& verb, PaperOptions& papers, const std::string& pdf_help, CLI::Option* needed) {
  CLI::Option* const pdf = verb.add_flag("--pdf", papers.pdf, pdf_help);
  CLI::Option* const paper = verb.add_option("--paper", papers.paper, "what is printed on: a4 or letter")
                                 ->type_name("SIZE")
                                 ->check(CLI::IsMember({"a4", "letter"}));
  if (needed == nullptr)
    return;
  pdf->needs(needed);
  paper->needs(needed);
}

void add_page_file(CLI::App& verb, std::string& page) {
  verb.add_option(
          "--page", page,
          "the offline page, sheerpole.html; not given: the one beside the program, or in share/sheerpole")
      ->type_name("FILE");
}

void add_workers(CLI::App& verb, unsigned& workers) {
  verb.add_option("--workers", workers, "how many boats at a time; not given: as many as processors")
      ->check(CLI::Range(1U, most_workers).description(""))
      ->type_name("NUMBER");
}

void add_outside(CLI::App& verb, OutsideOptions& outside) {
  verb.add_option("--outside", outside.programs,
                  "a program that makes papers as well, by its path; may be given again. It runs with your "
                  "rights: name only what you would run yourself")
      ->type_name("PROGRAM")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  verb.add_option("--outside-seconds", outside.seconds, "how long such a program may take for an answer")
      ->check(CLI::Range(1, 3600))
      ->type_name("SECONDS")
      ->capture_default_str();
}

} // namespace sheerpole
