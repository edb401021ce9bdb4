#include "driver/command_line.hpp"

#include "backend/table/rig_tables.hpp"
#include "driver/exit_code.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"

#include <CLI/CLI.hpp>

#include <functional>

namespace sheerpole {

namespace {

constexpr const char* cautions = "Sheerpole works out lengths and reports what it finds; it does not "
                                 "approve a rig. Work aloft and on loaded\n"
                                 "rigging can kill: replace one stay at a time, dry-fit before you cut, "
                                 "follow local rules and, where they ask for\n"
                                 "it, leave the work to a licensed rigger.\n";

std::vector<std::string> words_of(const std::vector<Listing>& listings) {
  std::vector<std::string> result;
  for (const Listing& listing : listings)
    result.push_back(listing.name);
  return result;
}

/// `a | b | c`, for help texts.
std::string choices(const std::vector<std::string>& words) {
  std::string result;
  for (const std::string& word : words)
    result += (result.empty() ? "" : ", ") + word;
  return result;
}

void add_findings_form(CLI::App& verb, FindingsForm& form) {
  verb.add_option("--form", form.form, "how findings are shown: text, lines (one each) or json")
      ->check(CLI::IsMember({"text", "lines", "json"}));
}

} // namespace

int run_command_line(int argument_count, char** arguments) {
  CLI::App app{"Reads a boat's standing rigging as text and works out what to cut.", "sheerpole"};
  app.footer(std::string("\n") + cautions);
  app.require_subcommand(1);
  app.set_version_flag("--version", "sheerpole " SHEERPOLE_VERSION ", language 1");
  std::function<int()> verb;

  CheckOptions check;
  CLI::App* check_app = app.add_subcommand("check", "read a rig file and say what is wrong with it");
  check_app->add_option("FILE", check.file, "the rig file")->required();
  add_findings_form(*check_app, check.findings);
  check_app
      ->add_option("--print", check.print,
                   "show what one step of the work handed on: " + choices(words_of(phases())))
      ->check(CLI::IsMember(words_of(phases())));
  check_app->callback([&] { verb = [&] { return check_verb(check); }; });

  BuildOptions build;
  CLI::App* build_app =
      app.add_subcommand("build", "check a rig file and write cut lists, findings and drawings");
  build_app->add_option("FILE", build.file, "the rig file")->required();
  build_app->add_option("--into", build.folder, "folder to write to; it is made if it is not there")
      ->required();
  build_app->add_option("--only", build.only, "make only these, with commas: cut-list,diagram")
      ->delimiter(',');
  add_findings_form(*build_app, build.findings);
  build_app->callback([&] { verb = [&] { return build_verb(build); }; });

  ShowOptions show;
  std::vector<std::string> tables;
  for (const NamedTable& table : rig_tables())
    tables.emplace_back(table.name);
  CLI::App* show_app = app.add_subcommand("show", "show one table of the rig on the terminal");
  show_app->add_option("TABLE", show.table, "which one: " + choices(tables))->required();
  show_app->add_option("FILE", show.file, "the rig file")->required();
  show_app->add_option("--form", show.form, "text or csv")->check(CLI::IsMember({"text", "csv"}));
  show_app->callback([&] { verb = [&] { return show_verb(show); }; });

  std::string listing;
  CLI::App* list_app =
      app.add_subcommand("list", "list what there is: kinds of parts, units, findings, tables");
  list_app->add_option("WHAT", listing, "one of: " + choices(words_of(listings())))
      ->required()
      ->check(CLI::IsMember(words_of(listings())));
  list_app->callback([&] { verb = [&] { return list_verb(listing); }; });

  std::string word;
  CLI::App* explain_app = app.add_subcommand("explain", "explain a finding, a kind or an end by its name");
  explain_app->add_option("WORD", word, "for example missing-unit, turnbuckle, jaw")->required();
  explain_app->callback([&] { verb = [&] { return explain_verb(word); }; });

  try {
    app.parse(argument_count, argument_count > 0 ? arguments : nullptr);
  } catch (const CLI::Success& asked) { // --help, --version
    return app.exit(asked) == 0 ? exit_clean : exit_usage;
  } catch (const CLI::ParseError& error) {
    print_error(std::string("sheerpole: ") + error.what() + "\nsheerpole --help shows how it is used.\n");
    return exit_usage;
  }
  return verb();
}

} // namespace sheerpole
