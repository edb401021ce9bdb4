#include "driver/reference/command_tree.hpp"

#include "backend/table/rig_tables.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/command_line.hpp"
#include "kinds/kind_row.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <string_view>

namespace sheerpole {

namespace {

/// The words between the braces of what the library says of a value: `FORM:{text,lines}`.
std::vector<std::string> words_in_braces(std::string_view type) {
  std::vector<std::string> words;
  const std::size_t open = type.find('{');
  const std::size_t close = type.find('}');
  if (open == std::string_view::npos || close == std::string_view::npos)
    return words;
  for (std::string_view list = type.substr(open + 1, close - open - 1); !list.empty();) {
    const std::size_t end = std::min(list.find(','), list.size());
    words.emplace_back(list.substr(0, end));
    list.remove_prefix(std::min(end + 1, list.size()));
  }
  return words;
}

/// Of values that the verbs look up themselves.
std::vector<std::string> words_of_tables(std::string_view value) {
  std::vector<std::string> words;
  if (value == "NAMES")
    for (const auto& backend : built_in_backends())
      words.push_back(backend->describe().name);
  if (value == "LAYER")
    for (const std::string_view layer : find_kind("layer")->name_choices)
      words.emplace_back(layer);
  return words;
}

CommandOption option_of(const CLI::Option& option) {
  CommandOption result;
  for (const std::string& name : option.get_snames())
    result.names.push_back("-" + name);
  for (const std::string& name : option.get_lnames())
    result.names.push_back("--" + name);
  const std::string type = option.get_type_name();
  result.help = option.get_description();
  result.needed = option.get_required();
  result.several = option.get_items_expected_max() > 1 ||
                   option.get_multi_option_policy() == CLI::MultiOptionPolicy::TakeAll;
  const bool takes_value = option.get_items_expected_max() > 0;
  if (takes_value) {
    result.value = option.get_positional() ? option.get_name(true) : type.substr(0, type.find(':'));
    result.choices = words_in_braces(type);
    if (result.choices.empty())
      result.choices = words_of_tables(result.value);
    if (result.value == "TEXT")
      result.value = "WORD";
  }
  if (option.get_positional() && result.value == "TABLE")
    for (const NamedTable& table : rig_tables())
      result.choices.emplace_back(table.name);
  return result;
}

Command command_of(const CLI::App& app, const std::string& name) {
  Command command{name, app.get_description(), {}, {}, app.get_footer()};
  std::replace(command.cautions.begin(), command.cautions.end(), '\n', ' ');
  for (const CLI::Option* option : app.get_options())
    (option->get_positional() ? command.given : command.options).push_back(option_of(*option));
  return command;
}

} // namespace

bool CommandOption::takes_path() const {
  constexpr std::string_view paths[] = {"FILE", "FILE-NOW", "FOLDER", "PROGRAM"};
  return (std::find(std::begin(paths), std::end(paths), value) != std::end(paths) ||
          (value == "TABLE" && !names.empty())) &&
         choices.empty();
}

std::vector<Command> command_tree() {
  CLI::App app;
  AskedFor asked;
  describe_command_line(app, asked);
  std::vector<Command> commands{command_of(app, "")};
  for (const CLI::App* verb : app.get_subcommands({}))
    commands.push_back(command_of(*verb, verb->get_name()));
  // `help` takes the name of any of them.
  for (Command& command : commands)
    for (CommandOption& given : command.given)
      if (given.value == "COMMAND")
        for (std::size_t i = 1; i < commands.size(); ++i)
          given.choices.push_back(commands[i].name);
  return commands;
}

} // namespace sheerpole
