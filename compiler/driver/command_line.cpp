#include "driver/command_line.hpp"

#include "backend/table/rig_tables.hpp"
#include "base/edit_distance.hpp"
#include "driver/exit_code.hpp"
#include "driver/fleet/workers.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <filesystem>
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

/// The layers that a file may state, from the earliest.
std::vector<std::string> layer_names() {
  const auto names = find_kind("layer")->name_choices;
  return {names.begin(), names.end()};
}

/// `a | b | c`, for help texts.
std::string choices(const std::vector<std::string>& words) {
  std::string result;
  for (const std::string& word : words)
    result += (result.empty() ? "" : ", ") + word;
  return result;
}

void add_allowed_folders(CLI::App& verb, CompileOptions& rig) {
  verb.add_option("--allow-folder", rig.folders,
                  "a folder beside the rig file's own from which `use` may read; may be given again")
      ->check([](const std::string& folder) {
        return std::filesystem::is_directory(folder) ? std::string() : "there is no folder " + folder;
      })
      ->type_name("FOLDER")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

void add_rig_options(CLI::App& verb, CompileOptions& rig) {
  verb.add_option("--set", rig.settings,
                  "try another value for this run: --set \"toggle-12.length=90 mm\"; may be given again")
      ->type_name("NAME=VALUE")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
  verb.add_option("--shop", rig.shop,
                  "restate every length for the way this shop of the file delivers its screws")
      ->type_name("NAME");
  add_allowed_folders(verb, rig);
}

void add_findings_form(CLI::App& verb, FindingsForm& form) {
  verb.add_option("--form", form.form, "how findings are shown: text, lines (one each), json or sarif")
      ->check(CLI::IsMember({"text", "lines", "json", "sarif"}))
      ->type_name("FORM");
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

/// Says what is wrong with the command line in plain words; the library's own words are for programmers.
int usage_error(const CLI::App& app, int argument_count, char** arguments, const CLI::ParseError& error) {
  if (argument_count < 2) {
    print_error(app.help());
    return exit_usage;
  }
  std::vector<std::string> verbs;
  for (const CLI::App* verb : app.get_subcommands({}))
    verbs.push_back(verb->get_name());
  const std::string first = arguments[1];
  if (!first.empty() && first.front() != '-' &&
      std::find(verbs.begin(), verbs.end(), first) == verbs.end()) {
    std::string message = "sheerpole: there is no command `" + first + "`";
    if (const auto near = nearest_name(first, verbs))
      message += "; did you mean `" + *near + "`?";
    print_error(message + "\nThe commands are " + choices(verbs) +
                "; sheerpole --help says what they do.\n");
    return exit_usage;
  }
  const bool known = std::find(verbs.begin(), verbs.end(), first) != verbs.end();
  print_error("sheerpole: " + std::string(error.what()) + "\nsheerpole " + (known ? first + " " : "") +
              "--help shows how it is used.\n");
  return exit_usage;
}

} // namespace

int run_command_line(int argument_count, char** arguments) {
  CLI::App app{"Reads a boat's standing rigging as text and works out what to cut.", "sheerpole"};
  app.footer(std::string("\n") + cautions);
  app.require_subcommand(1);
  app.get_formatter()->label("REQUIRED", "");
  app.get_formatter()->label("TEXT", "");
  app.get_formatter()->label("SUBCOMMAND", "COMMAND");
  app.get_formatter()->label("Positionals", "You give");
  app.set_help_flag("-h,--help", "show this page");
  app.set_version_flag("--version", "sheerpole " SHEERPOLE_VERSION ", language 1", "show the version");
  std::function<int()> verb;

  BeginOptions begin;
  std::vector<std::string> rigs(first_rigs().begin(), first_rigs().end());
  CLI::App* begin_app =
      app.add_subcommand("begin", "write a first rig file from a few numbers or from a table of lengths");
  begin_app->add_option("FILE", begin.file, "the rig file to write; one that is there is left as it is")
      ->required();
  begin_app->add_option("--boat", begin.numbers.boat, "her name")->type_name("NAME");
  begin_app->add_option("--rig", begin.numbers.rig, "kind of rig: " + choices(rigs))
      ->check(CLI::IsMember(rigs))
      ->type_name("RIG");
  begin_app
      ->add_option("--mast-height", begin.numbers.mast_height, "masthead above the waterline: \"12.5 m\"")
      ->type_name("LENGTH");
  begin_app->add_option("--beam", begin.numbers.beam, "greatest beam")->type_name("LENGTH");
  begin_app->add_option("--base", begin.numbers.base, "from the mast to the stem fitting")
      ->type_name("LENGTH");
  begin_app
      ->add_option("--lengths", begin.lengths,
                   "in place of these numbers a table (CSV) with the headings stay, length and, as wanted, "
                   "side, title")
      ->type_name("TABLE");
  begin_app->add_flag("--print", begin.print, "show the file on the terminal and write nothing");
  begin_app->callback([&] { verb = [&] { return begin_verb(begin); }; });

  CheckOptions check;
  CLI::App* check_app = app.add_subcommand("check", "read a rig file and say what is wrong with it");
  check_app->add_option("FILE", check.file, "the rig file")->required();
  add_findings_form(*check_app, check.findings);
  add_rig_options(*check_app, check.rig);
  check_app
      ->add_option("--print", check.print,
                   "show what one step of the work handed on: " + choices(words_of(phases())))
      ->check(CLI::IsMember(words_of(phases())));
  check_app
      ->add_option("--depends", check.depends,
                   "file to write for make or ninja: it names the files that were read, and as what is "
                   "made of them itself without its .d: boat.checked.d")
      ->check([](const std::string& name) {
        return name.size() > 2 && name.ends_with(".d") ? std::string() : "the name must end in .d";
      })
      ->type_name("FILE");
  check_app->callback([&] { verb = [&] { return check_verb(check); }; });

  BuildOptions build;
  CLI::App* build_app =
      app.add_subcommand("build", "check a rig file and write cut lists, findings and drawings");
  build_app->add_option("FILE", build.file, "the rig file")->required();
  build_app->add_option("--into", build.folder, "folder to write to; it is made if it is not there")
      ->required();
  build_app->add_option("--only", build.only, "make only these, with commas: cut-list,diagram")
      ->delimiter(',')
      ->type_name("NAMES");
  build_app
      ->add_option("--since", build.since,
                   "rig file of the version before: papers say what has changed since")
      ->type_name("FILE");
  build_app->add_flag("--pdf", build.pdf, "papers as PDF as well");
  build_app->add_option("--paper", build.paper, "what is printed on: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}));
  build_app
      ->add_option("--depends", build.depends,
                   "file to write for make or ninja: it names the files that were made and those that were "
                   "read for them")
      ->type_name("FILE");
  add_outside(*build_app, build.outside);
  add_findings_form(*build_app, build.findings);
  add_rig_options(*build_app, build.rig);
  build_app->callback([&] { verb = [&] { return build_verb(build); }; });

  ChangesOptions changes;
  CLI::App* changes_app =
      app.add_subcommand("changes", "say what differs between two rig files, or with other values");
  changes_app->add_option("FILE", changes.from, "the rig file as it was")->required();
  changes_app->add_option("FILE-NOW", changes.to, "the rig file as it is; not given: the same one");
  const std::vector<std::string> layers = layer_names();
  changes_app
      ->add_option("--from-as-of", changes.from_as_of,
                   "the first one without the layers after this one: " + choices(layers))
      ->check(CLI::IsMember(layers))
      ->type_name("LAYER");
  changes_app->add_option("--as-of", changes.rig.as_of, "the second one likewise")
      ->check(CLI::IsMember(layers))
      ->type_name("LAYER");
  changes_app->add_option("--into", changes.folder, "folder to write the sheet to, in all its forms")
      ->type_name("FOLDER");
  changes_app->add_flag("--pdf", changes.pdf, "as PDF as well, into the folder");
  changes_app->add_option("--paper", changes.paper, "what is printed on: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}));
  changes_app->add_option("--form", changes.form, "on the terminal: text or json")
      ->check(CLI::IsMember({"text", "json"}))
      ->type_name("FORM");
  add_rig_options(*changes_app, changes.rig);
  changes_app->callback([&] { verb = [&] { return changes_verb(changes); }; });

  FleetOptions fleet;
  CLI::App* fleet_app =
      app.add_subcommand("fleet", "check many boats at once, and write the papers of each");
  fleet_app
      ->add_option("FILE", fleet.files,
                   "the rig files; @list.txt stands for those that list.txt names, one a line")
      ->required();
  CLI::Option* fleet_into = fleet_app->add_option(
      "--into", fleet.folder,
      "folder to write to, in it a folder for each boat; not given: the boats are only checked");
  fleet_into->type_name("FOLDER");
  fleet_app->add_option("--only", fleet.only, "make only these, with commas: cut-list,diagram")
      ->delimiter(',')
      ->needs(fleet_into)
      ->type_name("NAMES");
  fleet_app->add_flag("--pdf", fleet.pdf, "papers as PDF as well")->needs(fleet_into);
  fleet_app->add_option("--paper", fleet.paper, "what is printed on: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}))
      ->needs(fleet_into);
  add_workers(*fleet_app, fleet.workers);
  add_findings_form(*fleet_app, fleet.findings);
  add_allowed_folders(*fleet_app, fleet.rig);
  fleet_app->callback([&] { verb = [&] { return fleet_verb(fleet); }; });

  FindOptions find;
  CLI::App* find_app =
      app.add_subcommand("find", "find which boats carry a part, a size or a batch, or what is old");
  find_app
      ->add_option("WHAT", find.what,
                   "a part, a kind, words of a title, a batch; a size or a thread: \"1/2 in\", \"12 mm\", "
                   "M12; or an age: \"before 2016-05-01\"")
      ->required();
  find_app
      ->add_option("FILE", find.files,
                   "the rig files; @list.txt stands for those that list.txt names, one a line")
      ->required();
  find_app->add_option("--form", find.form, "text, csv or json")
      ->check(CLI::IsMember({"text", "csv", "json"}))
      ->type_name("FORM");
  add_workers(*find_app, find.workers);
  add_allowed_folders(*find_app, find.rig);
  find_app->callback([&] { verb = [&] { return find_verb(find); }; });

  PlanOptions plan;
  CLI::App* plan_app =
      app.add_subcommand("plan", "plan what to cut from which stock, for one boat or several at once");
  plan_app->add_option("FILE", plan.files, "the rig files")->required();
  plan_app->add_option("--into", plan.folder, "folder to write to; it is made if it is not there")
      ->required();
  add_findings_form(*plan_app, plan.findings);
  add_allowed_folders(*plan_app, plan.rig);
  plan_app->callback([&] { verb = [&] { return plan_verb(plan); }; });

  SealOptions seal;
  CLI::App* seal_app =
      app.add_subcommand("seal", "put rig, libraries and papers in one folder with a sum of each");
  seal_app->add_option("FILE", seal.file, "the rig file")->required();
  seal_app->add_option("--into", seal.folder, "folder to write to; it must hold nothing else")->required();
  seal_app->add_option("--only", seal.only, "make only these, with commas: cut-list,survey-report")
      ->delimiter(',')
      ->type_name("NAMES");
  seal_app->add_flag("--pdf", seal.pdf, "papers as PDF as well");
  seal_app->add_option("--paper", seal.paper, "what is printed on: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}));
  seal_app
      ->add_option("--shop", seal.rig.shop,
                   "restate every length for the way this shop of the file delivers its screws")
      ->type_name("NAME");
  add_allowed_folders(*seal_app, seal.rig);
  seal_app->callback([&] { verb = [&] { return seal_verb(seal); }; });

  VerifyOptions verify;
  CLI::App* verify_app =
      app.add_subcommand("verify", "say what of a sealed folder is altered, missing or extra");
  verify_app->add_option("FOLDER", verify.folder, "the sealed folder")->required();
  verify_app
      ->add_option("--seal", verify.seal, "the seal that was printed when it was sealed, as written down")
      ->type_name("DIGEST");
  verify_app->add_flag("--again", verify.again, "make the papers again and compare every byte");
  verify_app->callback([&] { verb = [&] { return verify_verb(verify); }; });

  MendOptions mend;
  CLI::App* mend_app = app.add_subcommand("mend", "put right in the file what can be read in one way only");
  mend_app->add_option("FILE", mend.files, "rig files; those they use are mended too")->required();
  mend_app->add_flag("--print", mend.print, "show the mended text of the one FILE and write nothing");
  mend_app->callback([&] { verb = [&] { return mend_verb(mend); }; });

  ShowOptions show;
  std::vector<std::string> tables;
  for (const NamedTable& table : rig_tables())
    tables.emplace_back(table.name);
  CLI::App* show_app = app.add_subcommand("show", "show one table of the rig on the terminal");
  show_app->add_option("TABLE", show.table, "which one: " + choices(tables))->required();
  show_app->add_option("FILE", show.file, "the rig file")->required();
  show_app->add_option("--form", show.form, "text or csv")
      ->check(CLI::IsMember({"text", "csv"}))
      ->type_name("FORM");
  add_rig_options(*show_app, show.rig);
  show_app->callback([&] { verb = [&] { return show_verb(show); }; });

  TidyOptions tidy;
  CLI::App* tidy_app = app.add_subcommand("tidy", "lay the text of rig files out in one way");
  tidy_app->add_option("FILE", tidy.files, "the rig files; those they use are not touched")->required();
  CLI::Option* look =
      tidy_app->add_flag("--look", tidy.look, "write nothing; say which files are not tidy");
  tidy_app->add_flag("--print", tidy.print, "write nothing; show the tidy text of one file")
      ->excludes(look);
  add_findings_form(*tidy_app, tidy.findings);
  tidy_app->callback([&] { verb = [&] { return tidy_verb(tidy); }; });

  ListOptions list;
  CLI::App* list_app =
      app.add_subcommand("list", "list what there is: kinds of parts, units, findings, tables");
  list_app->add_option("WHAT", list.what, "one of: " + choices(words_of(listings())))
      ->required()
      ->check(CLI::IsMember(words_of(listings())));
  add_outside(*list_app, list.outside);
  list_app->callback([&] { verb = [&] { return list_verb(list); }; });

  std::string word;
  CLI::App* explain_app = app.add_subcommand("explain", "explain a finding, a kind or an end by its name");
  explain_app->add_option("WORD", word, "for example missing-unit, turnbuckle, jaw")->required();
  explain_app->callback([&] { verb = [&] { return explain_verb(word); }; });

  for (CLI::App* command : app.get_subcommands({}))
    command->group("Commands");

  try {
    app.parse(argument_count, argument_count > 0 ? arguments : nullptr);
  } catch (const CLI::Success& asked) { // --help, --version
    return app.exit(asked) == 0 ? exit_clean : exit_usage;
  } catch (const CLI::ParseError& error) {
    return usage_error(app, argument_count, arguments, error);
  }
  return verb();
}

} // namespace sheerpole
