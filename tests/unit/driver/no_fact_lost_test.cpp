// No stated fact is lost: each property of each kind is stated in a boat that uses such a thing, changed by
// one step, and something that a user sees has to change: a length, a check, a finding or a paper. What the
// table of kinds marks as for the record alone has to stand among the sources and in the survey report.

#include "backend/table/rig_tables.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/compile.hpp"
#include "kinds/kind_row.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
#include <optional>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace sheerpole::no_fact_lost_test {
namespace {

using Files = std::map<std::string, std::string>;

class Texts final : public FileReader {
public:
  explicit Texts(const Files& files) : files_(files) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t) override {
    const auto found = files_.find(path);
    if (found == files_.end())
      return Failure::not_found;
    return found->second;
  }

private:
  const Files& files_;
};

std::string text_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// A boat with all that it uses.
struct Boat {
  std::string main;
  Files files;
};

std::vector<Boat> boats() {
  const std::string examples = std::string(SHEERPOLE_EXAMPLES_DIR) + "/";
  const std::string golden = std::string(SHEERPOLE_GOLDEN_DIR) + "/";
  std::vector<Boat> result;
  // The boat of the table first: it holds what the examples have no use for.
  result.push_back({"every-kind.rig", {{"every-kind.rig", text_of(golden + "inputs/every-kind.rig")}}});
  for (const char* name :
       {"tie-rod", "insulators", "hydraulic", "foil", "bowsprit", "jumpers", "split-backstay"}) {
    const std::string file = std::string(name) + ".rig";
    result.push_back({file,
                      {{file, text_of(golden + "rigs/" + file)},
                       {"parts/rig-parts.rig", text_of(golden + "rigs/parts/rig-parts.rig")}}});
  }
  Files parts;
  for (const char* name : {"parts/demo-hardware", "parts/demo-lines", "parts/demo-gaff-hardware",
                           "parts/demo-trailer-hardware", "stock/demo-loft-stock"})
    parts[std::string(name) + ".rig"] = text_of(examples + name + ".rig");
  for (const char* name :
       {"sallow", "smidgeon", "grisolde", "oddnys-wager", "pellimoor", "pellimoor-turnbuckles"}) {
    Boat boat{std::string(name) + ".rig", parts};
    std::string& text = boat.files[boat.main];
    text = text_of(examples + boat.main);
    // A few draws tell as well that something changes, and every look is a build.
    if (text.find("\nuncertainty") == std::string::npos)
      text += "\nuncertainty {\n  draws: 1_000\n}\n";
    result.push_back(std::move(boat));
  }
  return result;
}

/// What a user sees of a boat, apart from where every number is listed: lengths, checks, findings,
/// papers.
struct Seen {
  bool errors = false;
  std::string all;
  std::string sources;
  std::string report;
};

Seen look(const Boat& boat, bool with_papers) {
  Texts reader(boat.files);
  CompileOptions options;
  options.threads = 1;
  const Compilation result = compile(boat.main, reader, options);
  Seen seen;
  seen.errors = result.has_errors;
  for (const Diagnostic& finding : result.findings)
    seen.all += finding.slug + ": " + finding.message + " " + finding.waived + "\n";
  for (const CheckResult& check : result.results)
    seen.all += check.check + " " + check.subject + " " + std::string(name_of(check.outcome)) + " " +
                check.words + "\n";
  if (!result.checked)
    return seen;
  for (const NamedTable& table : rig_tables()) {
    const std::string text = render_text(table.build(*result.checked));
    (table.name == "sources" ? seen.sources : seen.all) += text;
  }
  if (!with_papers)
    return seen;
  for (const auto& backend : usual_backends()) {
    const std::string name = backend->describe().name;
    BackendRequest request{*result.checked};
    request.printed = false;
    for (const OutputFile& file : backend->generate(request).files)
      (name == "survey-report" ? seen.report : seen.all) += file.bytes;
  }
  return seen;
}

/// A declaration in a file: where its braces stand.
struct Block {
  std::string file;
  std::string name;      ///< may be empty
  std::size_t begin = 0; ///< behind the opening brace
  std::size_t end = 0;   ///< the closing brace
  bool one_line = false;
};

bool is_word(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '_';
}

std::vector<Block> blocks_of(const Boat& boat, std::string_view kind) {
  std::vector<Block> result;
  for (const auto& [file, text] : boat.files) {
    if (file.find('/') == std::string::npos && file != boat.main &&
        boat.files.at(boat.main).find("\"" + file + "\"") == std::string::npos)
      continue; // another boat
    bool quoted = false, comment = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (text[i] == '\n')
        comment = false;
      if (comment)
        continue;
      if (text[i] == '"')
        quoted = !quoted;
      else if (text[i] == '#' && !quoted)
        comment = true;
      if (quoted || comment || (i > 0 && is_word(text[i - 1])) || text.compare(i, kind.size(), kind) != 0 ||
          is_word(text[i + kind.size()]))
        continue;
      const std::size_t line_end = text.find('\n', i);
      const std::size_t brace = text.find('{', i);
      if (brace == std::string::npos || brace > line_end ||
          text.substr(i, brace - i).find_first_of(":,(") != std::string::npos)
        continue;
      int depth = 1;
      std::size_t at = brace + 1;
      bool in_text = false;
      for (; at < text.size() && depth > 0; ++at) {
        if (text[at] == '"')
          in_text = !in_text;
        else if (!in_text && text[at] == '#')
          at = text.find('\n', at);
        else if (!in_text)
          depth += text[at] == '{' ? 1 : text[at] == '}' ? -1 : 0;
      }
      std::size_t name_end = i + kind.size() + 1;
      const std::size_t name_begin = name_end;
      while (name_end < brace && is_word(text[name_end]))
        ++name_end;
      result.push_back(
          {file, text.substr(name_begin, name_end - name_begin), brace + 1, at - 1, at - 1 < line_end});
    }
  }
  return result;
}

/// Where a property of a block stands: of its value from behind the colon to the end.
std::optional<std::pair<std::size_t, std::size_t>> value_in(const std::string& text, const Block& block,
                                                            std::string_view property) {
  int depth = 0;
  bool quoted = false;
  for (std::size_t i = block.begin; i < block.end; ++i) {
    if (text[i] == '"')
      quoted = !quoted;
    if (quoted)
      continue;
    if (text[i] == '#')
      i = text.find('\n', i);
    depth += text[i] == '{' || text[i] == '(' ? 1 : text[i] == '}' || text[i] == ')' ? -1 : 0;
    if (depth != 0 || is_word(text[i - 1]) || text.compare(i, property.size(), property) != 0 ||
        text[i + property.size()] != ':')
      continue;
    const std::size_t begin = i + property.size() + 1;
    std::size_t end = begin;
    bool in_text = false;
    while (end < block.end && (in_text || (text[end] != '\n' && text[end] != '#'))) {
      if (text[end] == '"')
        in_text = !in_text;
      ++end;
    }
    return std::pair(begin, end);
  }
  return std::nullopt;
}

/// The boat with a property of one of its blocks stated so.
Boat with(const Boat& boat, const Block& block, std::string_view property, const std::string& value) {
  Boat result = boat;
  std::string& text = result.files[block.file];
  if (const auto found = value_in(text, block, property))
    text.replace(found->first, found->second - found->first, " " + value);
  else
    text.insert(block.begin, "\n  " + std::string(property) + ": " + value + "\n");
  return result;
}

std::string number_text(double value) {
  std::ostringstream out;
  out.precision(6);
  out << std::defaultfloat << value;
  return out.str();
}

/// The first number of a text, some steps on.
std::optional<std::string> number_moved(const std::string& value, double factor) {
  static const std::regex number(R"((^|[\s(])(-?[0-9][0-9_]*(\.[0-9]+)?))");
  std::smatch match;
  if (!std::regex_search(value, match, number))
    return std::nullopt;
  std::string digits = match[2];
  std::erase(digits, '_');
  const double old = std::stod(digits);
  return match.prefix().str() + match[1].str() + number_text(old == 0.0 ? factor - 1.0 : old * factor) +
         match.suffix().str();
}

/// Other values for a property, from the nearest step outwards.
std::vector<std::string> other_values(const Boat& boat, const PropertyRow& row, const std::string& value) {
  std::vector<std::string> result;
  const auto add = [&](const std::optional<std::string>& one) {
    if (one && *one != value)
      result.push_back(*one);
  };
  switch (row.type) {
  case ValueType::quantity:
  case ValueType::quantity_list:
  case ValueType::number:
  case ValueType::vector:
  case ValueType::any:
    for (const double factor : {1.05, 0.9, 1.5, 0.5, 4.0, 0.1, 20.0})
      add(number_moved(value, factor));
    break;
  case ValueType::count:
    for (const double factor : {2.0, 3.0, 1.0 / 3.0})
      add(number_moved(value, factor));
    break;
  case ValueType::text:
  case ValueType::word:
    for (const char* other : {"\"another word\"", "\"none\"", "\"1x19\"", "\"3-strand polyester\""})
      add(std::string(other));
    break;
  case ValueType::size:
    for (const char* other : {"\"10 mm\"", "\"6 mm\"", "\"1/2 in\"", "\"20 mm\""})
      add(std::string(other));
    break;
  case ValueType::thread:
    for (const char* other : {"\"M10\"", "\"M16\"", "\"3/8-24 UNF\""})
      add(std::string(other));
    break;
  case ValueType::date:
    for (const char* other : {"2026-04-01", "2011-03-04", "2029-01-01"})
      add(std::string(other));
    break;
  case ValueType::choice:
  case ValueType::choice_list:
    for (const std::string_view other : row.choices)
      add(std::string(other));
    break;
  case ValueType::reference:
  case ValueType::reference_list:
    for (const KindRow& kind : all_kinds())
      if (kind.category == row.refers_to)
        for (const Block& block : blocks_of(boat, kind.name))
          add(block.name);
    if (row.refers_to == Category::point)
      for (const Block& block : blocks_of(boat, "points")) {
        static const std::regex name(R"(\n\s*([a-z][a-z0-9-]*)(\.[a-z]+)?:)");
        const std::string text = boat.files.at(block.file).substr(block.begin, block.end - block.begin);
        for (std::sregex_iterator at(text.begin(), text.end(), name), end; at != end; ++at)
          add((*at)[1].str());
      }
    break;
  case ValueType::path:
    for (const auto& [from, to] : {std::pair("clamped", "free"), std::pair("free", "clamped")})
      if (value.find(from) != std::string::npos)
        add(std::regex_replace(value, std::regex(from), to));
    break;
  case ValueType::end:
    add(number_moved(value, 1.3));
    add(number_moved(value, 0.7));
    for (const char* other : {"jaw (gap: 3 mm, pin: \"20 mm\")", "eye (hole: 30 mm, thickness: 40 mm)"})
      add(std::string(other));
    break;
  }
  return result;
}

std::string trimmed(std::string text) {
  while (!text.empty() && (text.back() == ' ' || text.back() == '\r'))
    text.pop_back();
  const std::size_t begin = text.find_first_not_of(' ');
  return begin == std::string::npos ? "" : text.substr(begin);
}

struct Tried {
  std::size_t properties = 0;
  std::vector<std::string> lost;
};

class Fixture {
public:
  Fixture() : boats_(boats()) {}

  void try_property(const KindRow& kind, const PropertyRow& row, Tried& tried) {
    ++tried.properties;
    bool stated_at_all = false;
    std::size_t looks = 0;
    for (const bool with_papers : {false, true}) {
      for (const Boat& boat : boats_) {
        for (const Block& block : blocks_of(boat, kind.name)) {
          if (looks > 60)
            break;
          const auto found = value_in(boat.files.at(block.file), block, row.name);
          std::vector<std::string> values;
          if (found)
            values.push_back(
                trimmed(boat.files.at(block.file).substr(found->first, found->second - found->first)));
          else
            values.push_back(std::string(row.example));
          for (const std::string& other : other_values(boat, row, values.front()))
            values.push_back(other);
          std::optional<Seen> before;
          for (std::size_t i = 0; i < values.size() && i < 6; ++i) {
            ++looks;
            const Seen seen = look(with(boat, block, row.name, values[i]), with_papers);
            if (seen.errors)
              continue;
            stated_at_all = true;
            if (before && before->all != seen.all)
              return;
            if (!before)
              before = seen;
          }
        }
      }
    }
    tried.lost.push_back(std::string(kind.name) + ": " + std::string(row.name) +
                         (stated_at_all ? "" : " (was an error wherever it was stated)"));
  }

private:
  std::vector<Boat> boats_;
};

} // namespace

TEST(NoStatedFactIsLost, DISABLED_EveryPropertyOfEveryKindChangesSomething) {
  Fixture fixture;
  Tried tried;
  for (const KindRow& kind : all_kinds())
    for (const PropertyRow& row : kind.properties)
      fixture.try_property(kind, row, tried);
  std::cout << tried.properties << " properties tried, " << tried.lost.size() << " lost\n";
  for (const std::string& lost : tried.lost)
    ADD_FAILURE() << lost;
}

} // namespace sheerpole::no_fact_lost_test
