#include "driver/depends_file.hpp"
#include "driver/fleet/fleet_boat.hpp"
#include "driver/phases.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "service/compile.hpp"

namespace sheerpole::check_verb {

namespace {

struct Options {
  std::vector<std::string> files;
  CompileOptions rig;
  std::string form = "text"; ///< of the findings
  std::string print;         ///< a phase; empty: none
  std::string depends;       ///< file for what was read, `boat.checked.d`; empty: none
  std::string fail_on = "error";
};

/// What stands for the check, which makes no file: `boat.checked` for `boat.checked.d`.
int write_depends_of_check(const Compilation& compilation, const std::string& file) {
  constexpr std::string_view ending = ".d";
  Dependencies made;
  made.outputs.push_back(file.substr(0, file.size() - ending.size()));
  add_files(made.inputs, compilation);
  return write_depends(made, file);
}

/// Several boats one after the other, as `fleet` shows them.
int check_all(const Options& options) {
  if (!options.print.empty() || !options.depends.empty()) {
    print_error(
        "sheerpole: --print and --depends take one file\nsheerpole check --help shows how it is used.\n");
    return exit_usage;
  }
  const FleetWork work{
      .rig = options.rig, .form = options.form, .fail_on = options.fail_on, .colour = out_has_colour()};
  FleetLog log(work.form, false);
  int worst = exit_clean;
  print_out(log.begin());
  for (const std::string& file : options.files) {
    const FleetOutcome outcome = do_boat(file, {}, work);
    print_out(log.add(file, outcome));
    print_error(outcome.errors);
    worst = std::max({worst, static_cast<int>(outcome.code), code_for(outcome.counts, options.fail_on)});
  }
  print_out(log.end());
  if (work.form == "text")
    print_out("\n" + log.table());
  else // what is on the other stream is for programs
    print_error(log.table());
  return worst;
}

int run(const Options& options) {
  if (options.files.size() > 1)
    return check_all(options);
  const auto file = rig_argument(options.files.front());
  if (!file.ok()) {
    print_error(file.error());
    return exit_usage;
  }
  if (!options.depends.empty() && !file.value().on_disk) {
    print_error("sheerpole: --depends needs files on the disk, which make and ninja can look at\n");
    return exit_usage;
  }
  CompileOptions rig = options.rig;
  if (options.print.empty() && options.form != "junit") // which says what each check lacks
    rig.wanted = Wanted::counts;
  rig.rig_alone = options.print.empty();
  const Compilation& compilation = until_the_end(compile(file.value().path, *file.value().reader, rig));
  if (!options.depends.empty())
    if (const int code = write_depends_of_check(compilation, options.depends); code != exit_clean)
      return code;
  if (options.print.empty()) {
    print_out(
        show_findings(compilation, options.form, out_has_colour(), file.value().path, options.fail_on));
    return code_for(count_severities(compilation.findings), options.fail_on);
  }
  print_lines(print_phase(compilation, options.print));
  // A program that asked for a document gets one, though nothing is found.
  if (!compilation.findings.empty() || (options.form != "text" && options.form != "lines"))
    print_error(
        show_findings(compilation, options.form, error_has_colour(), file.value().path, options.fail_on));
  return code_for(count_severities(compilation.findings), options.fail_on);
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("check", "read a rig file and say what is wrong with it");
  Options& options = options_of(verb, asked, run);
  std::vector<std::string> phase_names;
  for (const Phase& phase : phases())
    phase_names.emplace_back(phase.name);
  verb.add_option(
          "FILE", options.files,
          "the rig file, or several; - is standard input, REVISION:FILE a file as git has it in that "
          "revision, :FILE as it is staged")
      ->required();
  add_findings_form(verb, options.form);
  add_fail_on(verb, options.fail_on);
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
