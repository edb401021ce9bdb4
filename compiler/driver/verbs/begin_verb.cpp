#include "diagnostics/excerpt.hpp"
#include "driver/begin/lengths_rig.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"
#include "service/begin/begin_request.hpp"
#include "service/begin/first_rig.hpp"
#include "source/file_reader.hpp"
#include "units/scan_number.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace sheerpole::begin_verb {

namespace {

struct Options {
  std::string file; ///< to be written; empty only with `print`
  std::string boat = "My boat";
  std::string rig;                  ///< empty: not given; only without `lengths`
  std::string line = "wire";        ///< or "rope"
  std::string measured_by;          ///< the same as `rig`
  std::vector<std::string> numbers; ///< beside asked_numbers(), as written; empty: not given
  std::string lengths;              ///< a table of lengths, CSV
  bool print = false;               ///< show the text and write nothing
};

const std::vector<std::string> lines{"wire", "rope"};
const std::vector<std::string> ways{"drawing", "tape", "cord"};

FirstLine line_of(const Options& options) {
  return options.line == "rope" ? FirstLine::rope : FirstLine::wire;
}

constexpr std::size_t largest_table = 1'000'000;

/// Whether the text is a length with a unit, longer than nothing; says so when it is not.
bool good_length(const std::string& option, const std::string& text) {
  if (service::is_first_length(text))
    return true;
  const std::vector<std::string> readings = readings_of_digit_groups(text);
  print_error("sheerpole: " + option +
              " takes a length with its unit, such as \"12.5 m\" or \"41' 6\\\"\"" +
              (text.empty() ? "" : "; not `" + printable(text) + "`") +
              (readings.empty() ? "" : "; write " + printable(alternatives(readings))) + "\n");
  return false;
}

/// The numbers that the rig asks for; nothing, and a word on each, where one is missing, cannot be read or
/// is of no use to it.
bool take_numbers(const Options& options, FirstNumbers& first) {
  const RigStart& start = rig_start(first.rig);
  bool good = true;
  for (std::size_t i = 0; i < options.numbers.size(); ++i) {
    const std::string name(asked_numbers()[i].name);
    const std::string& text = options.numbers[i];
    const bool asked = std::find(start.asks.begin(), start.asks.end(), name) != start.asks.end();
    if (asked) {
      good = good_length("--" + name, text) && good;
      first.numbers[name] = text;
    } else if (!text.empty()) {
      print_error("sheerpole: --" + name + " has no place in a " + first.rig + "; leave it out\n");
      good = false;
    }
  }
  return good;
}

std::optional<std::string> from_numbers(const Options& options) {
  FirstNumbers first;
  first.boat = options.boat;
  first.line = line_of(options);
  if (!options.rig.empty())
    first.rig = options.rig;
  if (options.measured_by == "cord")
    first.measured_by = FirstMeasure::cord;
  else if (options.measured_by == "tape")
    first.measured_by = FirstMeasure::tape;
  if (!take_numbers(options, first))
    return std::nullopt;
  return first_rig(first);
}

/// With a table of lengths nothing else is asked, and what is given all the same would be lost.
bool nothing_beside_lengths(const Options& options) {
  std::vector<std::string> idle;
  if (!options.rig.empty())
    idle.emplace_back("--rig");
  if (!options.measured_by.empty())
    idle.emplace_back("--measured-by");
  for (std::size_t i = 0; i < options.numbers.size(); ++i)
    if (!options.numbers[i].empty())
      idle.push_back("--" + std::string(asked_numbers()[i].name));
  for (const std::string& option : idle)
    print_error("sheerpole: " + option + " has no place beside --lengths; leave it out\n");
  return idle.empty();
}

std::optional<std::string> from_lengths(const Options& options) {
  if (!nothing_beside_lengths(options))
    return std::nullopt;
  DiskFileReader reader;
  const auto table = reader.read(options.lengths, largest_table);
  if (!table.ok()) {
    print_error("sheerpole: cannot read " + printable(options.lengths) + "\n");
    return std::nullopt;
  }
  const std::string name = printable(std::filesystem::path(options.lengths).filename().generic_string());
  auto rig = lengths_rig(table.value(), name, options.boat, line_of(options));
  if (rig.ok())
    return rig.value();
  for (const TableFailure& failure : rig.error())
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
  if (printable(options.boat) != options.boat) {
    print_error("sheerpole: the name of the boat holds a sign that does not show: `" +
                printable(options.boat) + "`\nnothing was written\n");
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
  const std::vector<std::string> rigs = rig_start_names();
  verb.add_option("FILE", options.file, "the rig file to write; one that is there is left as it is")
      ->required();
  verb.add_option("--boat", options.boat, "her name")->type_name("NAME");
  verb.add_option("--rig", options.rig, "kind of rig, masthead-sloop unless said: " + choices(rigs))
      ->check(CLI::IsMember(rigs))
      ->type_name("RIG");
  verb.add_option("--line", options.line, "what her stays are of, wire unless said: " + choices(lines))
      ->check(CLI::IsMember(lines))
      ->type_name("LINE");
  verb.add_option("--measured-by", options.measured_by,
                  "how her lengths are to be known, drawing unless said: " + choices(ways))
      ->check(CLI::IsMember(ways))
      ->type_name("WAY");
  options.numbers.resize(asked_numbers().size());
  for (std::size_t i = 0; i < asked_numbers().size(); ++i) {
    const AskedNumber& asked = asked_numbers()[i];
    verb.add_option("--" + std::string(asked.name), options.numbers[i], std::string(asked.help))
        ->type_name("LENGTH");
  }
  verb.add_option("--lengths", options.lengths,
                  "in place of these numbers a table (CSV) with the headings stay, length and, as wanted, "
                  "side, title and those of a reading: see docs/begin/README.md")
      ->type_name("TABLE");
  verb.add_flag("--print", options.print, "show the file on the terminal and write nothing");
}

} // namespace sheerpole::begin_verb
