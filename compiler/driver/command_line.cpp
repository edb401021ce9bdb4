#include "driver/command_line.hpp"

#include "base/edit_distance.hpp"
#include "driver/help_page.hpp"
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

constexpr std::string_view cautions =
    "Sheerpole works out lengths and reports what it finds; it does not approve a rig. Work aloft and on "
    "loaded rigging can kill: replace one stay at a time, dry-fit before you cut, follow local rules and, "
    "where they ask for it, leave the work to a licensed rigger.";

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
                           Verb{"watch", watch_verb::add_to},     Verb{"page", page_verb::add_to},
                           Verb{"list", list_verb::add_to},       Verb{"explain", explain_verb::add_to},
                           Verb{"help", help_verb::add_to},       Verb{"version", version_verb::add_to}};

/// Those that show no findings, and so have nothing to colour.
constexpr std::array<std::string_view, 7> without_findings{"enter",   "verify", "editor", "watch",
                                                           "explain", "help",   "version"};

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

std::vector<std::string> words_between(std::string_view text, char by) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find(by, at), text.size());
    parts.emplace_back(text.substr(at, end - at));
    at = end + 1;
  }
  return parts;
}

/// What the library says of a value in plain words: one that is in no list, one out of a range, one that is
/// not there. Everything else stays as it is.
std::string value_not_taken(const std::string& said) {
  const std::size_t colon = said.find(": ");
  if (colon == std::string::npos)
    return said;
  const std::string option = said.substr(0, colon);
  const std::string rest = said.substr(colon + 2);
  constexpr std::string_view in_list = " not in {", in_range = " not in range ", missing = "1 required ";
  if (const std::size_t at = rest.find(in_range); rest.starts_with("Value ") && at != std::string::npos)
    return option + " takes a number from " + rest.substr(at + in_range.size()) + ", not `" +
           rest.substr(6, at - 6) + "`";
  if (const std::size_t at = rest.find(in_list); at != std::string::npos && rest.ends_with('}')) {
    const std::string word = rest.substr(0, at);
    const std::size_t begin = at + in_list.size();
    const std::vector<std::string> known = words_between(rest.substr(begin, rest.size() - 1 - begin), ',');
    return option + " takes " + choices(known) + ", not `" + word + "`" + did_you_mean(word, known);
  }
  if (rest.starts_with(missing))
    return option + " takes a value, and none is given";
  return said;
}

/// An option before the command, which the program itself does not have.
std::string option_not_taken(const std::string& word) {
  const std::string option = word.substr(0, word.find('='));
  return "there is no option `" + option + "` before a command" +
         did_you_mean(option, {"--help", "--version"});
}

/// Says what is wrong with the command line in plain words; the library's own words are for programmers.
int usage_error(CLI::App& app, int argument_count, char** arguments, const CLI::ParseError& error) {
  if (argument_count < 2) {
    print_error(fitted_help(app.help(), help_width()));
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
  // An option that there is not is told before what is lacking besides.
  const std::vector<std::string> left = known ? app.remaining(true) : std::vector<std::string>();
  const bool unknown_option =
      std::any_of(left.begin(), left.end(), [](const std::string& word) { return word.starts_with("--"); });
  const bool not_taken =
      known && (dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr ||
                (unknown_option && dynamic_cast<const CLI::RequiredError*>(&error) != nullptr));
  print_error("sheerpole: " +
              (not_taken ? word_not_taken(app, first)
               : known   ? value_not_taken(error.what())
                         : option_not_taken(first)) +
              "\nsheerpole " + (known ? first + " " : "") + "--help shows how it is used.\n");
  return exit_usage;
}

void add_verbs(CLI::App& app, AskedFor& asked, const Verb* only) {
  app.description("Reads a boat's standing rigging as text and works out what to cut.");
  app.name("sheerpole");
  app.footer("\n" + std::string(cautions) + "\n");
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
  for (CLI::App* verb : app.get_subcommands({})) {
    verb->group("Commands");
    if (std::find(without_findings.begin(), without_findings.end(), verb->get_name()) ==
        without_findings.end())
      add_colour(*verb);
  }
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
    print_out(fitted_help(app.help(), help_width()));
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
