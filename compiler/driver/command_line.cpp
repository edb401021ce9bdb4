#include "driver/command_line.hpp"

#include "base/edit_distance.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/version.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

namespace {

constexpr const char* cautions = "Sheerpole works out lengths and reports what it finds; it does not "
                                 "approve a rig. Work aloft and on loaded\n"
                                 "rigging can kill: replace one stay at a time, dry-fit before you cut, "
                                 "follow local rules and, where they ask for\n"
                                 "it, leave the work to a licensed rigger.\n";

struct Verb {
  std::string_view name;
  void (*add_to)(CLI::App& app, AskedFor& asked);
};

/// All verbs, in the order of the help.
constexpr std::array verbs{Verb{"begin", begin_verb::add_to},     Verb{"enter", enter_verb::add_to},
                           Verb{"check", check_verb::add_to},     Verb{"build", build_verb::add_to},
                           Verb{"changes", changes_verb::add_to}, Verb{"fleet", fleet_verb::add_to},
                           Verb{"find", find_verb::add_to},       Verb{"plan", plan_verb::add_to},
                           Verb{"seal", seal_verb::add_to},       Verb{"verify", verify_verb::add_to},
                           Verb{"mend", mend_verb::add_to},       Verb{"show", show_verb::add_to},
                           Verb{"tidy", tidy_verb::add_to},       Verb{"editor", editor_verb::add_to},
                           Verb{"list", list_verb::add_to},       Verb{"explain", explain_verb::add_to},
                           Verb{"help", help_verb::add_to},       Verb{"version", version_verb::add_to}};

/// The verb that the command line begins with; null when it begins with none, or with `help`, which is
/// about all of them.
const Verb* verb_asked_for(int argument_count, char** arguments) {
  if (argument_count < 2 || arguments[1] == std::string_view("help"))
    return nullptr;
  const auto found =
      std::find_if(verbs.begin(), verbs.end(), [&](const Verb& verb) { return verb.name == arguments[1]; });
  return found == verbs.end() ? nullptr : &*found;
}

/// The word that the verb has no place for, with what is near to it: an option, or one word too many.
std::string word_not_taken(CLI::App& app, const std::string& name) {
  std::string word;
  for (const std::string& left : app.remaining(true))
    if (word.empty() || (left.starts_with("-") && !word.starts_with("-")))
      word = left;
  if (!word.starts_with("-"))
    return "`" + word + "` is one word too many";
  const std::string option = word.substr(0, word.find('='));
  std::vector<std::string> known;
  for (const CLI::Option* each : app.get_subcommand(name)->get_options())
    for (const std::string& long_name : each->get_lnames())
      known.push_back("--" + long_name);
  return name + " has no option `" + option + "`" + did_you_mean(option, known);
}

/// Says what is wrong with the command line in plain words; the library's own words are for programmers.
int usage_error(CLI::App& app, int argument_count, char** arguments, const CLI::ParseError& error) {
  if (argument_count < 2) {
    print_error(app.help());
    return exit_usage;
  }
  std::vector<std::string> words;
  for (const CLI::App* verb : app.get_subcommands({}))
    words.push_back(verb->get_name());
  const std::string first = arguments[1];
  const bool known = std::find(words.begin(), words.end(), first) != words.end();
  if (!known && !first.empty() && first.front() != '-') {
    print_error("sheerpole: there is no command `" + first + "`" + did_you_mean(first, words) +
                "\nThe commands are " + choices(words) + "; sheerpole help says what they do.\n");
    return exit_usage;
  }
  const bool not_taken = known && dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr;
  print_error("sheerpole: " + (not_taken ? word_not_taken(app, first) : std::string(error.what())) +
              "\nsheerpole " + (known ? first + " " : "") + "--help shows how it is used.\n");
  return exit_usage;
}

void add_verbs(CLI::App& app, AskedFor& asked, const Verb* only) {
  app.description("Reads a boat's standing rigging as text and works out what to cut.");
  app.name("sheerpole");
  app.footer(std::string("\n") + cautions);
  app.require_subcommand(1);
  app.get_formatter()->label("REQUIRED", "");
  app.get_formatter()->label("TEXT", "");
  app.get_formatter()->label("SUBCOMMAND", "COMMAND");
  app.get_formatter()->label("Positionals", "You give");
  app.set_help_flag("-h,--help", "show this page");
  app.set_version_flag("-V,--version", version_words, "show the version");
  for (const Verb& verb : verbs)
    if (only == nullptr || only == &verb)
      verb.add_to(app, asked);
  for (CLI::App* verb : app.get_subcommands({}))
    verb->group("Commands");
}

} // namespace

void describe_command_line(CLI::App& app, AskedFor& asked) {
  add_verbs(app, asked, nullptr);
}

int run_command_line(int argument_count, char** arguments) {
  CLI::App app;
  AskedFor asked;
  // The options of one verb are quickly made, those of all are a good part of a short run.
  add_verbs(app, asked, verb_asked_for(argument_count, arguments));
  try {
    app.parse(argument_count, argument_count > 0 ? arguments : nullptr);
  } catch (const CLI::CallForHelp&) {
    print_out(app.help());
    return exit_clean;
  } catch (const CLI::CallForVersion& version) {
    print_out(version.what());
    return exit_clean;
  } catch (const CLI::ParseError& error) {
    return usage_error(app, argument_count, arguments, error);
  }
  return asked();
}

} // namespace sheerpole
