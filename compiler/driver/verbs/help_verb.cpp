#include "base/edit_distance.hpp"
#include "driver/help_page.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/version.hpp"

namespace sheerpole {

namespace help_verb {

namespace {

struct Options {
  std::string verb; ///< empty: the page of all of them
  const CLI::App* app = nullptr;
};

int run(const Options& options) {
  if (options.verb.empty()) {
    // Its own help() would show the page of the verb that was typed, which is this one.
    print_out(fitted_help(options.app->get_formatter()->make_help(options.app, options.app->get_name(),
                                                                  CLI::AppFormatMode::Normal),
                          help_width()));
    return exit_clean;
  }
  std::vector<std::string> words;
  for (const CLI::App* verb : options.app->get_subcommands({})) {
    words.push_back(verb->get_name());
    if (verb->get_name() == options.verb) {
      print_out(fitted_help(verb->help(options.app->get_name()), help_width()));
      return exit_clean;
    }
  }
  print_error("sheerpole: there is no command `" + options.verb + "`" + did_you_mean(options.verb, words) +
              "\nThe commands are " + choices(words) + ".\n");
  return exit_usage;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("help", "show the page of a command, or this one");
  Options& options = options_of(verb, asked, run);
  options.app = &app;
  verb.add_option("COMMAND", options.verb, "which one; not given: all of them in short");
}

} // namespace help_verb

namespace version_verb {

namespace {

struct Options {};

int run(const Options&) {
  print_out(version_words());
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  options_of(
      *app.add_subcommand("version", "show the versions of program, language and JSON, and the commit"),
      asked, run);
}

} // namespace version_verb

} // namespace sheerpole
