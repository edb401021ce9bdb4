#include "diagnostics/excerpt.hpp"
#include "driver/begin/first_rig.hpp"
#include "driver/begin/lengths_rig.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"
#include "source/file_reader.hpp"
#include "units/parse_quantity.hpp"

#include <filesystem>
#include <optional>

namespace sheerpole::begin_verb {

namespace {

struct Options {
  std::string file;     ///< to be written; empty only with `print`
  FirstNumbers numbers; ///< used when `lengths` is empty
  std::string lengths;  ///< a table of lengths, CSV
  bool print = false;   ///< show the text and write nothing
};

constexpr std::size_t largest_table = 1'000'000;

/// Whether the text is a length with a unit, longer than nothing; says so when it is not.
bool good_length(const std::string& option, const std::string& text) {
  const auto quantity = parse_quantity(text);
  if (quantity.ok() && quantity.value().dimension == dimension::length && quantity.value().si > 0.0)
    return true;
  print_error("sheerpole: " + option +
              " takes a length with its unit, such as \"12.5 m\" or \"41' 6\\\"\"" +
              (text.empty() ? "" : "; not `" + printable(text) + "`") + "\n");
  return false;
}

std::optional<std::string> from_numbers(const Options& options) {
  const FirstNumbers& numbers = options.numbers;
  bool good = good_length("--mast-height", numbers.mast_height);
  good = good_length("--beam", numbers.beam) && good;
  good = good_length("--base", numbers.base) && good;
  if (!good)
    return std::nullopt;
  return first_rig(numbers);
}

std::optional<std::string> from_lengths(const Options& options) {
  DiskFileReader reader;
  const auto table = reader.read(options.lengths, largest_table);
  if (!table.ok()) {
    print_error("sheerpole: cannot read " + printable(options.lengths) + "\n");
    return std::nullopt;
  }
  const std::string name = printable(std::filesystem::path(options.lengths).filename().generic_string());
  auto rig = lengths_rig(table.value(), name, options.numbers.boat);
  if (rig.ok())
    return rig.value();
  for (const LengthsFailure& failure : rig.error())
    print_error(printable(options.lengths) + ":" + std::to_string(failure.line) + ":" +
                std::to_string(failure.column) + ": " + printable(failure.words) + "\n");
  return std::nullopt;
}

/// Whether the file is without errors before anybody builds on it; says what is wrong when it is not.
bool can_be_read(const std::string& rig, const Options& options) {
  OneTextReader reader(printable(options.file), rig);
  const Compilation made = compile(printable(options.file), reader, {});
  if (made.checked)
    return true;
  print_error(show_findings(made, "text", error_has_colour()));
  return false;
}

int run(const Options& options) {
  if (printable(options.numbers.boat) != options.numbers.boat) {
    print_error("sheerpole: the name of the boat holds a sign that does not show: `" +
                printable(options.numbers.boat) + "`\nnothing was written\n");
    return exit_usage;
  }
  auto rig = options.lengths.empty() ? from_numbers(options) : from_lengths(options);
  if (rig && !can_be_read(*rig, options))
    rig.reset();
  if (!rig) {
    print_error("nothing was written\n");
    return options.lengths.empty() ? exit_usage : exit_errors;
  }
  if (options.print) {
    print_out(*rig);
    return exit_clean;
  }
  std::error_code ignored;
  if (std::filesystem::exists(options.file, ignored)) {
    print_error("sheerpole: " + printable(options.file) +
                " is there already and is left as it is; name another file\n");
    return exit_usage;
  }
  const std::filesystem::path path(options.file);
  OutputBundle bundle;
  bundle.files.push_back({path.filename().generic_string(), *rig});
  const std::string folder = path.parent_path().generic_string();
  const auto written = write_bundle(bundle, folder.empty() ? "." : folder, {options.lengths});
  if (!written.ok()) {
    print_error("sheerpole: " + describe(written.error()) + "; nothing was written\n");
    return exit_usage;
  }
  print_out("wrote " + printable(options.file) +
            "\nEvery cut of it is a DRAFT: its first lines say what to measure.\n"
            "Now: sheerpole check " +
            printable(options.file) + "\n");
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("begin", "write a first rig file from a few numbers or from a table of lengths");
  Options& options = options_of(verb, asked, run);
  const std::vector<std::string> rigs(first_rigs().begin(), first_rigs().end());
  FirstNumbers& numbers = options.numbers;
  verb.add_option("FILE", options.file, "the rig file to write; one that is there is left as it is")
      ->required();
  verb.add_option("--boat", numbers.boat, "her name")->type_name("NAME");
  verb.add_option("--rig", numbers.rig, "kind of rig: " + choices(rigs))
      ->check(CLI::IsMember(rigs))
      ->type_name("RIG");
  verb.add_option("--mast-height", numbers.mast_height, "masthead above the waterline: \"12.5 m\"")
      ->type_name("LENGTH");
  verb.add_option("--beam", numbers.beam, "greatest beam")->type_name("LENGTH");
  verb.add_option("--base", numbers.base, "from the mast to the stem fitting")->type_name("LENGTH");
  verb.add_option("--lengths", options.lengths,
                  "in place of these numbers a table (CSV) with the headings stay, length and, as wanted, "
                  "side, title")
      ->type_name("TABLE");
  verb.add_flag("--print", options.print, "show the file on the terminal and write nothing");
}

} // namespace sheerpole::begin_verb
