#include "diagnostics/excerpt.hpp"
#include "driver/begin/enter_readings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/replace_file.hpp"

#include <filesystem>

namespace sheerpole::enter_verb {

namespace {

struct Options {
  std::string file;
  std::string table;
  bool print = false; ///< show the text and write nothing
};

constexpr std::size_t largest_table = 1'000'000;

std::string counted(std::size_t count, const std::string& what) {
  return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

int run(const Options& options) {
  DiskFileReader reader;
  const auto table = reader.read(options.table, largest_table);
  if (!table.ok()) {
    print_error("sheerpole: cannot read " + printable(options.table) + "\n");
    return exit_usage;
  }
  const std::string name = printable(std::filesystem::path(options.table).filename().generic_string());
  const auto entered = enter_readings(options.file, reader, table.value(), name);
  if (!entered.ok()) {
    for (const TableFailure& failure : entered.error())
      print_error(printable(options.table) + ":" + std::to_string(failure.line) + ":" +
                  std::to_string(failure.column) + ": " + printable(failure.words) + "\n");
    print_error("nothing entered; " + printable(options.file) + " is as it was\n");
    return exit_errors;
  }
  const std::string empty = entered.value().empty_rows == 0
                                ? ""
                                : "; nothing filled in: " + counted(entered.value().empty_rows, "row");
  if (entered.value().readings == 0) {
    print_out("nothing to enter in " + printable(options.table) + empty + "\n");
    return exit_clean;
  }
  if (options.print) {
    print_out(entered.value().text);
    return exit_clean;
  }
  if (!replace_file(options.file, entered.value().text)) {
    print_error("sheerpole: cannot write " + printable(options.file) + "; it is as it was\n");
    return exit_usage;
  }
  print_out(counted(entered.value().readings, "reading") + " entered in " + printable(options.file) +
            empty + "\n`sheerpole check " + printable(options.file) + "` says what comes of them\n");
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("enter", "put the readings of a filled-in measuring sheet into the rig file");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.file, "rig file; readings are put behind what it holds")->required();
  verb.add_option("--from", options.table, "the table, CSV, as the back end measuring-sheet makes it")
      ->required();
  verb.add_flag("--print", options.print, "show the whole text and write nothing");
}

} // namespace sheerpole::enter_verb
