#include "service/begin/begin_request.hpp"

#include "diagnostics/excerpt.hpp"
#include "service/compile.hpp"
#include "units/parse_quantity.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <array>
#include <vector>

namespace sheerpole::service {

namespace {

template <class Value>
struct Word {
  std::string_view word;
  Value value;
};

constexpr std::array<Word<FirstLine>, 2> lines{{{"wire", FirstLine::wire}, {"rope", FirstLine::rope}}};
constexpr std::array<Word<FirstMeasure>, 3> ways{
    {{"cord", FirstMeasure::cord}, {"tape", FirstMeasure::tape}, {"drawing", FirstMeasure::drawing}}};
constexpr std::array<Word<bool>, 2> units{{{"millimetres", false}, {"inches", true}}};

/// Why there is no file.
struct NoFile {
  std::string words;
};

template <class Words>
auto value_of(std::string_view field, const std::string& word, const Words& all) {
  std::vector<std::string> known;
  for (const auto& each : all) {
    if (each.word == word)
      return each.value;
    known.emplace_back(each.word);
  }
  throw NoFile{word_is_none_of(field, printable(word), known)};
}

/// "Aunt's boat 2" as "aunt-s-boat-2.rig".
std::string file_called(std::string_view boat) {
  std::string name;
  for (const char c : boat) {
    const char small = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if ((small >= 'a' && small <= 'z') || (small >= '0' && small <= '9'))
      name += small;
    else if (!name.empty() && name.back() != '-')
      name += '-';
  }
  constexpr std::size_t longest = 60;
  name.resize(std::min(name.size(), longest));
  while (name.ends_with('-'))
    name.pop_back();
  return (name.empty() ? "boat" : name) + ".rig";
}

FirstNumbers numbers_of(const BeginRequest& request) {
  const std::vector<std::string> rigs = rig_start_names();
  if (std::find(rigs.begin(), rigs.end(), request.rig) == rigs.end())
    throw NoFile{word_is_none_of("rig", printable(request.rig), rigs)};
  if (request.name.empty() || printable(request.name) != request.name)
    throw NoFile{name_does_not_show(printable(request.name))};
  const RigStart& start = rig_start(request.rig);
  FirstNumbers first;
  first.boat = request.name;
  first.rig = request.rig;
  first.line = value_of("line", request.line, lines);
  first.measured_by = value_of("measured", request.measured, ways);
  first.inches = value_of("unit", request.unit, units);
  for (const std::string& name : start.asks)
    first.numbers[name] = start.example.at(name);
  for (const auto& [name, text] : request.numbers) {
    if (std::find(start.asks.begin(), start.asks.end(), name) == start.asks.end())
      throw NoFile{rig_has_no_such_number(request.rig, printable(name))};
    if (!is_first_length(text))
      throw NoFile{number_is_no_length(name, printable(text))};
    first.numbers[name] = text;
  }
  return first;
}

/// Nobody shall build on a file with errors.
void compiles(const std::string& file, const std::string& text) {
  OneTextReader reader(file, text);
  CompileOptions options;
  options.threads = 1;
  options.wanted = Wanted::counts;
  const Compilation made = compile(file, reader, options);
  if (made.checked)
    return;
  for (const Diagnostic& finding : made.findings)
    if (finding.severity == Severity::error)
      throw NoFile{numbers_make_no_rig(finding.message)};
}

} // namespace

bool is_first_length(std::string_view text) {
  const auto quantity = parse_quantity(text);
  return quantity.ok() && quantity.value().dimension == dimension::length && quantity.value().si > 0.0;
}

Result<BegunFile, std::string> begin_file(const BeginRequest& request) {
  try {
    FirstNumbers numbers = numbers_of(request);
    const FirstMeasure measured_by = numbers.measured_by;
    const std::string file = file_called(request.name);
    // The lengths of a tape are taken from her points, so those come first.
    numbers.measured_by = FirstMeasure::drawing;
    compiles(file, first_rig(numbers));
    numbers.measured_by = measured_by;
    BegunFile begun{file, first_rig(numbers)};
    compiles(file, begun.text);
    return begun;
  } catch (const NoFile& no_file) {
    return no_file.words;
  }
}

} // namespace sheerpole::service
