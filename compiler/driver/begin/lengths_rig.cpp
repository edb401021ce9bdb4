#include "driver/begin/lengths_rig.hpp"

#include "driver/begin/first_rig.hpp"
#include "units/parse_quantity.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace sheerpole {

namespace {

constexpr std::size_t no_column = static_cast<std::size_t>(-1);

/// A name of the language out of what stands in a cell: "Cap Shroud" becomes cap-shroud.
std::string name_from(std::string_view cell) {
  std::string result;
  for (const char c : cell) {
    const char small = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    const bool kept = (small >= 'a' && small <= 'z') || (small >= '0' && small <= '9');
    if (kept)
      result += small;
    else if (!result.empty() && result.back() != '-')
      result += '-';
  }
  while (!result.empty() && result.back() == '-')
    result.pop_back();
  return result;
}

struct NamedStay {
  std::string name;
  std::string title;
  std::map<std::string, std::string> lengths; ///< by side: "", "port", "starboard"
};

class LengthsReader {
public:
  LengthsReader(std::string_view table, const std::string& name) : rows_(read_csv(table)), name_(name) {}

  Result<std::string, std::vector<LengthsFailure>> run(const std::string& boat) {
    if (find_columns())
      for (std::size_t i = 1; i < rows_.size(); ++i)
        read_row(rows_[i]);
    if (failures_.empty() && stays_.empty())
      fail(1, "there is no stay in the table");
    if (!failures_.empty())
      return failures_;
    return written(boat);
  }

private:
  void fail(std::size_t line, std::string words) { failures_.push_back({line, std::move(words)}); }

  bool find_columns() {
    if (rows_.empty()) {
      fail(1,
           "the table is empty; its first row holds the headings stay, length and, as wanted, side, title");
      return false;
    }
    const auto column = [&](std::string_view heading) {
      const auto& cells = rows_.front().cells;
      const auto found = std::find_if(cells.begin(), cells.end(),
                                      [&](const std::string& cell) { return name_from(cell) == heading; });
      return found == cells.end() ? no_column : static_cast<std::size_t>(found - cells.begin());
    };
    stay_ = column("stay");
    length_ = column("length");
    side_ = column("side");
    title_ = column("title");
    if (stay_ == no_column || length_ == no_column)
      fail(1, "the first row holds the headings: stay and length, and as wanted side and title");
    return failures_.empty();
  }

  static std::string cell(const CsvRow& row, std::size_t column) {
    return column < row.cells.size() ? row.cells[column] : std::string();
  }

  void read_row(const CsvRow& row) {
    if (row.cells.size() == 1 && row.cells.front().empty())
      return; // an empty line
    const std::string name = name_from(cell(row, stay_));
    const std::string length = cell(row, length_);
    const std::string side = name_from(cell(row, side_));
    if (name.empty() || name.front() < 'a')
      return fail(row.line, "the stay has no name that begins with a letter");
    if (side != "" && side != "port" && side != "starboard")
      return fail(row.line,
                  "the side of " + name + " is `" + side + "`; write port or starboard, or nothing");
    const auto quantity = parse_quantity(length);
    if (!quantity.ok() || quantity.value().dimension != dimension::length || quantity.value().si <= 0.0)
      return fail(row.line,
                  "the length of " + name + ", `" + length +
                      "`, can not be read; write it with its unit, such as 11_642 mm or 38' 7 3/8\"");
    auto known = std::find_if(stays_.begin(), stays_.end(),
                              [&](const NamedStay& stay) { return stay.name == name; });
    if (known == stays_.end()) {
      stays_.push_back({name, cell(row, title_), {}});
      known = stays_.end() - 1;
    }
    const bool clash = known->lengths.count(side) > 0 ||
                       (!known->lengths.empty() && (side.empty() || known->lengths.count("") > 0));
    if (clash)
      return fail(row.line, name + (side.empty() ? "" : " " + side) + " stands in the table twice");
    known->lengths[side] = length;
  }

  std::string written(const std::string& boat) const {
    std::string text = "language 1\n\n";
    text += fmt::format(
        "# Made from the lengths in {}. The hardware is assumed, so every cut is a DRAFT.\n", name_);
    text +=
        R"(# What to do now: measure your own terminals and adjusters, put them in the place of first-eye, first-screw and
# first-wire with `measured` behind each number, and say how far each adjuster was open when you measured.
# `sheerpole check` says what is still assumed. Cut nothing while it does.

)";
    text += fmt::format("boat \"{}\" {{\n}}\n\n", escaped(boat));
    text += first_parts();
    for (const NamedStay& stay : stays_)
      text += written(stay);
    return text;
  }

  std::string written(const NamedStay& stay) const {
    const std::string title = stay.title.empty() ? "" : fmt::format(" \"{}\"", escaped(stay.title));
    const std::string note = fmt::format("measured \"{}\"", escaped(name_));
    std::string text = fmt::format("\nstay {}{} {{\n", stay.name, title);
    const bool centre = stay.lengths.count("") > 0;
    if (!centre) {
      std::string sides;
      for (const auto& [side, length] : stay.lengths)
        sides += (sides.empty() ? "" : ", ") + side;
      text += fmt::format("  sides: {}\n", sides);
    } else {
      text += fmt::format("  pin-to-pin: {} {}\n", stay.lengths.at(""), note);
    }
    text += "  line: first-wire\n  stack {\n    first-tang\n    first-eye\n    line\n"
            "    first-screw (open: 50 % assumed \"how far was it open when you measured?\")\n"
            "    first-plate\n  }\n}\n";
    if (!centre)
      for (const auto& [side, length] : stay.lengths)
        text += fmt::format("\nstay {}.{} {{\n  pin-to-pin: {} {}\n}}\n", stay.name, side, length, note);
    return text;
  }

  std::vector<CsvRow> rows_;
  std::string name_;
  std::size_t stay_ = no_column;
  std::size_t length_ = no_column;
  std::size_t side_ = no_column;
  std::size_t title_ = no_column;
  std::vector<NamedStay> stays_;
  std::vector<LengthsFailure> failures_;
};

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(" \t");
  if (begin == std::string::npos)
    return {};
  return text.substr(begin, text.find_last_not_of(" \t") - begin + 1);
}

char separator_of(std::string_view table) {
  const std::string_view first = table.substr(0, table.find('\n'));
  return first.find(';') != std::string_view::npos && first.find(',') == std::string_view::npos ? ';' : ',';
}

} // namespace

Result<std::string, std::vector<LengthsFailure>>
lengths_rig(std::string_view table, const std::string& name, const std::string& boat) {
  return LengthsReader(table, name).run(boat);
}

std::vector<CsvRow> read_csv(std::string_view table) {
  if (table.starts_with("\xEF\xBB\xBF"))
    table.remove_prefix(3);
  const char separator = separator_of(table);
  std::vector<CsvRow> rows;
  std::size_t line = 1;
  CsvRow row{line, {}};
  std::string cell;
  bool quoted = false;
  const auto end_cell = [&] {
    row.cells.push_back(trimmed(cell));
    cell.clear();
  };
  for (std::size_t i = 0; i < table.size(); ++i) {
    const char c = table[i];
    line += c == '\n' ? 1 : 0;
    if (quoted) {
      if (c == '"' && i + 1 < table.size() && table[i + 1] == '"') {
        cell += '"';
        ++i;
      } else if (c == '"') {
        quoted = false;
      } else {
        cell += c;
      }
    } else if (c == '"' && trimmed(cell).empty()) {
      cell.clear();
      quoted = true;
    } else if (c == separator) {
      end_cell();
    } else if (c == '\n') {
      end_cell();
      rows.push_back(std::move(row));
      row = {line, {}};
    } else if (c != '\r') {
      cell += c;
    }
  }
  if (!cell.empty() || !row.cells.empty()) {
    end_cell();
    rows.push_back(std::move(row));
  }
  return rows;
}

} // namespace sheerpole
