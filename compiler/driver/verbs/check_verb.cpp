#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/print_phase.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_depends.hpp"

namespace sheerpole {

namespace {

/// What stands for the check, which makes no file: `boat.checked` for `boat.checked.d`.
int write_depends_of_check(const Compilation& compilation, const std::string& file) {
  constexpr std::string_view ending = ".d";
  Dependencies made;
  made.outputs.push_back(file.substr(0, file.size() - ending.size()));
  made.add(*compilation.sources);
  return write_depends(made, file);
}

} // namespace

int check_verb(const CheckOptions& options) {
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!options.depends.empty())
    if (const int code = write_depends_of_check(compilation, options.depends); code != exit_clean)
      return code;
  if (options.print.empty()) {
    print_out(show_findings(compilation, options.findings.form, out_has_colour()));
    return compilation.has_errors ? exit_errors : exit_clean;
  }
  print_out(print_phase(compilation, options.print));
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, options.findings.form, error_has_colour()));
  return compilation.has_errors ? exit_errors : exit_clean;
}

} // namespace sheerpole
