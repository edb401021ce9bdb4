#include "driver/reference/command_tree.hpp"

#include <string_view>

namespace sheerpole {

namespace {

std::string joined(const std::vector<std::string>& words, std::string_view between) {
  std::string text;
  for (const std::string& word : words)
    text += (&word == &words.front() ? "" : std::string(between)) + word;
  return text;
}

/// Between single quotes of a shell.
std::string shell_text(std::string_view text) {
  std::string result = "'";
  for (const char c : text)
    result += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return result + "'";
}

std::string verb_words(const std::vector<Command>& commands) {
  std::vector<std::string> words;
  for (const Command& command : commands)
    if (!command.name.empty())
      words.push_back(command.name);
  return joined(words, " ");
}

/// What bash offers for a value: words of a list, or nothing, and then it offers files itself.
std::string bash_values(const CommandOption& option) {
  return option.choices.empty() ? ""
                                : "compgen -W " + shell_text(joined(option.choices, " ")) + " -- \"$word\"";
}

std::string bash_of(const Command& command) {
  std::string text = "    " + command.name + ")\n      case $before in\n";
  std::vector<std::string> names;
  for (const CommandOption& option : command.options) {
    names.insert(names.end(), option.names.begin(), option.names.end());
    if (option.value.empty())
      continue;
    const std::string values = bash_values(option);
    text += "        " + joined(option.names, "|") + ") " +
            (values.empty() ? std::string(option.takes_path() ? "" : "nothing=yes; ")
                            : "words=$(" + values + "); ") +
            "value=yes ;;\n";
  }
  text += "      esac\n      [ -z \"$value\" ] || { __sheerpole_offer; return; }\n      case $word in\n    "
          "    -*) words=$(compgen -W " +
          shell_text(joined(names, " ")) + " -- \"$word\") ;;\n";
  // What stands by itself is told apart where the first of it is no file.
  if (!command.given.empty() && !command.given.front().choices.empty())
    text += "        *) [ \"$given\" -gt 0 ] || words=$(" + bash_values(command.given.front()) + ") ;;\n";
  return text + "      esac\n      ;;\n";
}

std::string bash_script(const std::vector<Command>& commands) {
  std::string text =
      "# Completion of sheerpole for bash; made from its command line.\n"
      "__sheerpole_offer() {\n  COMPREPLY=()\n  [ -z \"$words\" ] || mapfile -t COMPREPLY <<<\"$words\"\n"
      "  if [ -z \"$words\" ] && [ -z \"$nothing\" ] && [[ $word != -* ]]; then\n"
      "    compopt -o filenames 2>/dev/null\n    mapfile -t COMPREPLY < <(compgen -f -- \"$word\")\n  "
      "fi\n}\n"
      "_sheerpole() {\n  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}\n"
      "  local words= nothing= value= given=0 at\n"
      "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n    nothing=yes\n    words=$(compgen -W " +
      shell_text(verb_words(commands) + " " + joined(commands.front().options.front().names, " ") +
                 " --version") +
      " -- \"$word\")\n    __sheerpole_offer\n    return\n  fi\n"
      "  for ((at = 2; at < COMP_CWORD; at++)); do\n"
      "    [[ ${COMP_WORDS[at]} == -* ]] || given=$((given + 1))\n  done\n  case ${COMP_WORDS[1]} in\n";
  for (const Command& command : commands)
    if (!command.name.empty())
      text += bash_of(command);
  return text + "  esac\n  __sheerpole_offer\n}\ncomplete -F _sheerpole sheerpole\n";
}

/// Text inside a specification of zsh, where brackets and colons have a meaning.
std::string zsh_text(std::string_view text) {
  std::string result;
  for (const char c : text)
    result += c == '[' || c == ']' || c == ':' || c == '\\' ? std::string("\\") + c : std::string(1, c);
  return result;
}

std::string zsh_action(const CommandOption& option) {
  if (!option.choices.empty())
    return "(" + joined(option.choices, " ") + ")";
  return option.takes_path() ? "_files" : " ";
}

std::string zsh_of(const Command& command) {
  std::string text = "    " + command.name + ")\n      _arguments";
  for (const CommandOption& option : command.options)
    for (const std::string& name : option.names)
      text += " \\\n        " +
              shell_text((option.several ? "*" : "") + name + "[" + zsh_text(option.help) + "]" +
                         (option.value.empty() ? "" : ":" + option.value + ":" + zsh_action(option)));
  std::size_t place = 0;
  for (const CommandOption& given : command.given)
    text += " \\\n        " + shell_text((given.several ? "*" : std::to_string(++place)) + ":" +
                                         given.value + ":" + zsh_action(given));
  return text + "\n      ;;\n";
}

std::string zsh_script(const std::vector<Command>& commands) {
  std::string text = "#compdef sheerpole\n# Completion of sheerpole for zsh; made from its command line.\n"
                     "if (( CURRENT == 2 )); then\n  local -a verbs=(\n";
  for (const Command& command : commands)
    if (!command.name.empty())
      text += "    " + shell_text(command.name + ":" + zsh_text(command.help)) + "\n";
  text += "  )\n  _describe command verbs\nelse\n  local verb=$words[2]\n  shift words\n  (( CURRENT-- "
          "))\n  case $verb in\n";
  for (const Command& command : commands)
    if (!command.name.empty())
      text += zsh_of(command);
  return text + "  esac\nfi\n";
}

std::string fish_script(const std::vector<Command>& commands) {
  std::string text = "# Completion of sheerpole for fish; made from its command line.\n";
  for (const Command& command : commands) {
    if (command.name.empty())
      continue;
    text += "complete -c sheerpole -n __fish_use_subcommand -f -a " + command.name + " -d " +
            shell_text(command.help) + "\n";
    const std::string here = "complete -c sheerpole -n '__fish_seen_subcommand_from " + command.name + "'";
    for (const CommandOption& option : command.options) {
      text += here;
      for (const std::string& name : option.names)
        text += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
      if (!option.value.empty())
        text += option.takes_path() ? " -r -F" : " -x";
      if (!option.choices.empty())
        text += " -a " + shell_text(joined(option.choices, " "));
      text += " -d " + shell_text(option.help) + "\n";
    }
    for (const CommandOption& given : command.given)
      if (!given.choices.empty())
        text += here + " -a " + shell_text(joined(given.choices, " ")) + "\n";
  }
  return text;
}

} // namespace

std::vector<OutputFile> completions(const std::vector<Command>& commands) {
  return {{"sheerpole.bash", bash_script(commands)},
          {"_sheerpole", zsh_script(commands)},
          {"sheerpole.fish", fish_script(commands)}};
}

} // namespace sheerpole
