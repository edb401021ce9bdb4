#include "driver/depends_file.hpp"
#include "driver/phases.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "service/compile.hpp"

namespace sheerpole::check_verb {

namespace {

struct Options {
  std::string file;
  CompileOptions rig;
  std::string form = "text"; ///< of the findings
  std::string print;         ///< a phase; empty: none
  std::string depends;       ///< file for what was read, `boat.checked.d`; empty: none
};

/// What stands for the check, which makes no file: `boat.checked` for `boat.checked.d`.
int write_depends_of_check(const Compilation& compilation, const std::string& file) {
  constexpr std::string_view ending = ".d";
  Dependencies made;
  made.outputs.push_back(file.substr(0, file.size() - ending.size()));
  add_files(made.inputs, *compilation.sources);
  return write_depends(made, file);
}

int run(const Options& options) {
  DiskFileReader reader;
  CompileOptions rig = options.rig;
  if (options.print.empty())
    rig.wanted = Wanted::counts;
  const Compilation& compilation = until_the_end(compile(options.file, reader, rig));
  if (!options.depends.empty())
    if (const int code = write_depends_of_check(compilation, options.depends); code != exit_clean)
      return code;
  if (options.print.empty()) {
    print_out(show_findings(compilation, options.form, out_has_colour()));
    return compilation.has_errors ? exit_errors : exit_clean;
  }
  print_lines(print_phase(compilation, options.print));
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, options.form, error_has_colour()));
  return compilation.has_errors ? exit_errors : exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("check", "read a rig file and say what is wrong with it");
  Options& options = options_of(verb, asked, run);
  std::vector<std::string> phase_names;
  for (const Phase& phase : phases())
    phase_names.emplace_back(phase.name);
  verb.add_option("FILE", options.file, "the rig file")->required();
  add_findings_form(verb, options.form);
  add_rig_options(verb, options.rig);
  verb.add_option("--print", options.print,
                  "show what one step of the work handed on: " + choices(phase_names))
      ->check(CLI::IsMember(phase_names));
  verb.add_option("--depends", options.depends,
                  "file to write for make or ninja: it names the files that were read, and as what is "
                  "made of them itself without its .d: boat.checked.d")
      ->check([](const std::string& name) {
        return name.size() > 2 && name.ends_with(".d") ? std::string() : "the name must end in .d";
      })
      ->type_name("FILE");
}

} // namespace sheerpole::check_verb
