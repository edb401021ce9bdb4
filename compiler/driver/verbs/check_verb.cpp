#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/print_phase.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"

namespace sheerpole {

int check_verb(const CheckOptions& options) {
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
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
