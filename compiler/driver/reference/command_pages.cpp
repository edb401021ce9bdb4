#include "driver/reference/command_tree.hpp"
#include "driver/reference/pages.hpp"

#include "base/code_point.hpp"

#include <string_view>

namespace sheerpole {

namespace {

constexpr std::string_view exit_codes[][2] = {
    {"0", "no error was found"},
    {"1", "an error was found, or with --fail-on what was asked for"},
    {"2", "the command line, or something that cannot be read or written"},
    {"3", "a fault of the program"},
};

std::string with_value(const CommandOption& option, const std::string& name) {
  return option.value.empty() ? name : name + " " + option.value;
}

/// `-h, --help`, each with what stands behind it; or the value by itself.
std::string names_of(const CommandOption& option) {
  std::string names;
  for (const std::string& name : option.names)
    names += (names.empty() ? "" : ", ") + with_value(option, name);
  return names.empty() ? option.value : names;
}

/// `sheerpole check [OPTIONS] FILE...`
std::string usage(const Command& command) {
  std::string line = "sheerpole" + (command.name.empty() ? "" : " " + command.name) + " [OPTIONS]";
  for (const CommandOption& given : command.given)
    line += " " + (given.needed ? given.value : "[" + given.value + "]") + (given.several ? "..." : "");
  return command.name.empty() ? line + " COMMAND" : line;
}

/// The help; the choices too, where it does not list them itself.
std::string help_of(const CommandOption& option) {
  std::string text = option.help;
  if (!option.choices.empty() && text.find(option.choices.front()) == std::string::npos) {
    text += ": ";
    for (const std::string& choice : option.choices)
      text += (&choice == &option.choices.front() ? "" : ", ") + choice;
  }
  return text;
}

std::string page_of(const Command& command) {
  std::string text = "\n## " + command.name + "\n\n" + markdown_text(command.help) + "\n\n`" +
                     usage(command) + "`\n\n" + markdown_heading_row({"word", "what it is"});
  for (const auto* list : {&command.given, &command.options})
    for (const CommandOption& option : *list)
      text += markdown_row({markdown_code(names_of(option)),
                            markdown_text(help_of(option)) +
                                (option.needed && !option.names.empty() ? "; **must be given**" : "")});
  return text;
}

std::string commands_page(const std::vector<Command>& commands) {
  std::string text = "# Commands\n\nMade from the command line that the program reads. `sheerpole help "
                     "COMMAND` and, where "
                     "they are installed, the pages\nof the manual (`man sheerpole-check`) say the same. "
                     "Exit codes of all "
                     "commands:\n\n" +
                     markdown_heading_row({"code", "when"});
  for (const auto& [code, when] : exit_codes)
    text += markdown_row({std::string(code), markdown_text(when)});
  text += "\n" + markdown_heading_row({"command", "what it does"});
  for (const Command& command : commands)
    if (!command.name.empty())
      text += markdown_row({"[" + command.name + "](#" + command.name + ")", markdown_text(command.help)});
  for (const Command& command : commands)
    if (!command.name.empty())
      text += page_of(command);
  return text;
}

/// Text as roff prints it: no sign of it is a command, and a hyphen is one that can be copied.
std::string roff(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '\\')
      result += "\\e";
    else if (c == '-')
      result += "\\-";
    else if ((c == '.' || c == '\'') && (result.empty() || result.ends_with('\n')))
      result += std::string("\\&") + c;
    else
      result += c;
  }
  return result;
}

std::string roff_paragraph(std::string_view text) {
  std::string result;
  for (const std::string& line : wrap_text(text, 76))
    result += roff(line) + "\n";
  return result;
}

std::string roff_list(std::string_view heading, const std::vector<CommandOption>& options) {
  std::string text;
  for (const CommandOption& option : options)
    text += ".TP\n\\fB" + roff(names_of(option)) + "\\fR\n" + roff_paragraph(help_of(option) + ".");
  return text.empty() ? text : ".SH " + std::string(heading) + "\n" + text;
}

std::string manual_page(const Command& command, const std::vector<Command>& commands) {
  const std::string name = "sheerpole" + (command.name.empty() ? "" : "-" + command.name);
  std::string title = name;
  for (char& c : title)
    c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  std::string summary = command.help;
  while (summary.ends_with('.'))
    summary.pop_back();
  // Without a day: the same source makes the same page.
  std::string text = ".TH " + roff(title) +
                     " 1 \"\" \"sheerpole " SHEERPOLE_VERSION "\" \"Sheerpole\"\n.SH NAME\n" + roff(name) +
                     " \\- " + roff(summary) + "\n.SH SYNOPSIS\n\\fB" + roff(usage(command)) + "\\fR\n" +
                     roff_list("ARGUMENTS", command.given) + roff_list("OPTIONS", command.options);
  if (command.name.empty()) {
    text += ".SH COMMANDS\n";
    for (const Command& verb : commands)
      if (!verb.name.empty())
        text += ".TP\n\\fB" + roff(verb.name) + "\\fR\n" +
                roff_paragraph(verb.help + "; see sheerpole-" + verb.name + "(1).");
  }
  text += ".SH \"EXIT STATUS\"\n";
  for (const auto& [code, when] : exit_codes)
    text += ".TP\n" + std::string(code) + "\n" + roff_paragraph(std::string(when) + ".");
  text += ".SH CAUTIONS\n" + roff_paragraph(commands.front().cautions) + ".SH \"SEE ALSO\"\n";
  return text + (command.name.empty()
                     ? roff_paragraph("The documents that come with the program, README.md first.")
                     : "\\fBsheerpole\\fR(1)\n");
}

} // namespace

std::vector<OutputFile> command_pages() {
  const std::vector<Command> commands = command_tree();
  std::vector<OutputFile> pages{{"README.md", commands_page(commands)}};
  for (const Command& command : commands)
    pages.push_back({"man/sheerpole" + (command.name.empty() ? "" : "-" + command.name) + ".1",
                     manual_page(command, commands)});
  for (OutputFile& script : completions(commands))
    pages.push_back({"completions/" + script.name, std::move(script.bytes)});
  return pages;
}

} // namespace sheerpole
