#include "backend/table/rig_tables.hpp"
#include "base/edit_distance.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"

namespace sheerpole {

int show_verb(const ShowOptions& options) {
  const NamedTable* wanted = nullptr;
  std::vector<std::string> names;
  for (const NamedTable& table : rig_tables()) {
    names.emplace_back(table.name);
    if (table.name == options.table)
      wanted = &table;
  }
  if (wanted == nullptr) {
    std::string message = "sheerpole: there is no table `" + options.table + "`";
    if (const auto near = nearest_name(options.table, names))
      message += "; did you mean `" + *near + "`?";
    print_error(message + "\n`sheerpole list tables` shows all.\n");
    return exit_usage;
  }
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!compilation.checked) {
    print_error(show_findings(compilation, "text", error_has_colour()));
    return exit_errors;
  }
  const Table table = wanted->build(*compilation.checked);
  print_out(options.form == "csv" ? render_csv(table) : render_text(table));
  return exit_clean;
}

} // namespace sheerpole
