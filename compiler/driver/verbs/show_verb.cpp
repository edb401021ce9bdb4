#include "backend/json/table_json.hpp"
#include "backend/table/rig_tables.hpp"
#include "base/edit_distance.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "service/compile.hpp"

#include <algorithm>

namespace sheerpole::show_verb {

namespace {

struct Options {
  std::string table;
  std::string file;
  CompileOptions rig;
  std::string form = "text"; ///< text, csv, json
};

int run(const Options& options) {
  const NamedTable* wanted = nullptr;
  std::vector<std::string> names;
  for (const NamedTable& table : rig_tables()) {
    names.emplace_back(table.name);
    if (table.name == options.table)
      wanted = &table;
  }
  if (wanted == nullptr) {
    print_error("sheerpole: there is no table `" + options.table + "`" +
                did_you_mean(options.table, names) + "\n`sheerpole list tables` shows all.\n");
    return exit_usage;
  }
  if (!options.rig.wishes.empty() && options.table != "turns") {
    print_error("sheerpole: --wish is for the table turns; " + options.table + " has no use for it\n");
    return exit_usage;
  }
  const auto file = rig_argument(options.file);
  if (!file.ok()) {
    print_error(file.error());
    return exit_usage;
  }
  const Compilation compilation = compile(file.value().path, *file.value().reader, options.rig);
  if (!compilation.checked) {
    print_error(show_findings(compilation, "text", error_has_colour()));
    return exit_errors;
  }
  const Table table = wanted->build(*compilation.checked);
  if (options.form == "json")
    print_out(render_json(table, {.table = wanted->name,
                                  .boat = compilation.checked->rig().boat.title,
                                  .draft = !compilation.checked->draft_reasons().empty()}));
  else
    print_lines(options.form == "csv" ? render_csv(table) : render_text(table));
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("show", "show one table of the rig on the terminal");
  Options& options = options_of(verb, asked, run);
  std::vector<std::string> tables;
  for (const NamedTable& table : rig_tables())
    tables.emplace_back(table.name);
  verb.add_option("TABLE", options.table, "which one: " + choices(tables))->required();
  verb.add_option("FILE", options.file,
                  "the rig file; - is standard input, REVISION:FILE a file as git has it in that revision")
      ->required();
  add_table_form(verb, options.form);
  verb.add_option("--wish", options.rig.wishes,
                  "with `turns`: what the rig is to be tuned to beside the wishes in the file, as in "
                  "\"mast head-aft 20 mm\", \"cap-shroud tension 15 %\"; may be given several times")
      ->type_name("WISH");
  add_rig_options(verb, options.rig);
}

} // namespace sheerpole::show_verb
