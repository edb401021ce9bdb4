#include "driver/begin/lengths_rig.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/begin/first_rig.hpp"
#include "kinds/kind_row.hpp"
#include "units/parse_quantity.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

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

using Row = std::vector<CsvCell>;

/// What a pin-to-pin length may be, metres; that of the language.
const PropertyRow& range_of_lengths() {
  return *find_property(find_kind("stay")->properties, "pin-to-pin");
}

class LengthsReader {
public:
  LengthsReader(std::string_view table, const std::string& name) : table_(read_csv(table)), name_(name) {}

  Result<std::string, std::vector<LengthsFailure>> run(const std::string& boat) {
    failures_ = std::move(table_.failures);
    for (const Row& row : table_.rows)
      for (const CsvCell& cell : row)
        if (printable(cell.text) != cell.text)
          fail(cell, "`" + cell.text + "` holds a line end or a sign that does not show");
    if (failures_.empty() && find_columns())
      for (std::size_t i = 1; i < table_.rows.size(); ++i)
        read_row(table_.rows[i]);
    if (failures_.empty() && stays_.empty())
      failures_.push_back({1, 1, "there is no stay in the table"});
    if (!failures_.empty())
      return failures_;
    return written(boat);
  }

private:
  void fail(const CsvCell& cell, std::string words) {
    failures_.push_back({cell.line, cell.column, std::move(words)});
  }

  bool find_columns() {
    if (table_.rows.empty()) {
      failures_.push_back({1, 1,
                           "the table is empty; its first row holds the headings stay, length and, as "
                           "wanted, side, title"});
      return false;
    }
    const Row& headings = table_.rows.front();
    for (std::size_t i = 0; i < headings.size(); ++i) {
      const std::string heading = name_from(headings[i].text);
      std::size_t* const column = heading == "stay"     ? &stay_
                                  : heading == "length" ? &length_
                                  : heading == "side"   ? &side_
                                  : heading == "title"  ? &title_
                                                        : nullptr;
      if (column != nullptr && *column != no_column)
        fail(headings[i], "the heading " + heading + " stands there twice");
      else if (column != nullptr)
        *column = i;
      else if (!headings[i].text.empty())
        fail(headings[i], "the heading `" + headings[i].text +
                              "` is none of stay, length, side and title; take its column out");
    }
    if (failures_.empty() && (stay_ == no_column || length_ == no_column))
      fail(headings.front(),
           "the first row holds the headings: stay and length, and as wanted side and title");
    return failures_.empty();
  }

  /// The cell of a column; where the row is shorter an empty one, at the end of the row.
  static CsvCell cell(const Row& row, std::size_t column) {
    return column < row.size() ? row[column] : CsvCell{"", row.back().line, row.back().column};
  }

  /// A cell that stands in no column that is read. One that is empty is but a comma too many.
  bool beyond(const Row& row) {
    const Row& headings = table_.rows.front();
    for (std::size_t i = 0; i < row.size(); ++i)
      if (!row[i].text.empty() && (i >= headings.size() || headings[i].text.empty())) {
        fail(row[i], "`" + row[i].text + "` stands under no heading");
        return true;
      }
    return false;
  }

  void read_row(const Row& row) {
    if (row.size() == 1 && row.front().text.empty())
      return; // an empty line
    if (beyond(row))
      return;
    const CsvCell name_cell = cell(row, stay_);
    const CsvCell length = cell(row, length_);
    const CsvCell side_cell = cell(row, side_);
    const std::string name = name_from(name_cell.text);
    const std::string side = name_from(side_cell.text);
    if (name.empty() || name.front() < 'a')
      return fail(name_cell, "the stay has no name that begins with a letter");
    if (name.starts_with("first-"))
      return fail(name_cell, "names that begin with `first-` are those of the assumed hardware; call " +
                                 name + " something else");
    if (side != "" && side != "port" && side != "starboard")
      return fail(side_cell, "the side of " + name + " is `" + side_cell.text +
                                 "`; write port or starboard, or nothing");
    const auto quantity = parse_quantity(length.text);
    if (!quantity.ok() || quantity.value().dimension != dimension::length)
      return fail(length,
                  "the length of " + name + ", `" + length.text +
                      "`, cannot be read; write it with its unit, such as 11_642 mm or 38' 7 3/8\"");
    const PropertyRow& range = range_of_lengths();
    if (quantity.value().si < range.least || quantity.value().si > range.most)
      return fail(length, fmt::format("the length of {}, `{}`, is not from {} mm to {} m", name,
                                      length.text, range.least * 1000, range.most));
    auto [known, added] = places_.try_emplace(name, stays_.size());
    if (added)
      stays_.push_back({name, cell(row, title_).text, {}});
    NamedStay& stay = stays_[known->second];
    const bool clash = stay.lengths.count(side) > 0 ||
                       (!stay.lengths.empty() && (side.empty() || stay.lengths.count("") > 0));
    if (clash)
      return fail(name_cell, name + (side.empty() ? "" : " " + side) + " stands in the table twice");
    const CsvCell title = cell(row, title_);
    if (stay.title.empty())
      stay.title = title.text;
    if (!title.text.empty() && title.text != stay.title)
      return fail(title, name + " has the title `" + stay.title + "` in a row above, and `" + title.text +
                             "` here");
    stay.lengths[side] = length.text;
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

  CsvTable table_;
  std::string name_;
  std::size_t stay_ = no_column;
  std::size_t length_ = no_column;
  std::size_t side_ = no_column;
  std::size_t title_ = no_column;
  std::vector<NamedStay> stays_;
  std::map<std::string, std::size_t> places_; ///< of each name in `stays_`
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

namespace {

/// Takes a table apart sign by sign, and keeps count of where it is.
class CsvReader {
public:
  explicit CsvReader(std::string_view table) : table_(table), separator_(separator_of(table)) {}

  CsvTable read() {
    while (!table_.empty())
      cell();
    if (!row_.empty())
      result_.rows.push_back(std::move(row_));
    return std::move(result_);
  }

private:
  char take() {
    const char c = table_.front();
    table_.remove_prefix(1);
    if (c == '\n') {
      ++line_;
      column_ = 1;
    } else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) {
      ++column_;
    }
    return c;
  }

  bool ends_cell() const {
    return table_.empty() || table_.front() == separator_ || table_.front() == '\n' ||
           table_.starts_with("\r\n");
  }

  /// One cell with the separator or line end behind it. A separator at the end of the table has a cell
  /// behind it.
  void cell() {
    while (!ends_cell() && (table_.front() == ' ' || table_.front() == '\t'))
      take();
    CsvCell cell{"", line_, column_};
    if (!table_.empty() && table_.front() == '"')
      quoted(cell);
    else
      while (!ends_cell())
        cell.text += take();
    cell.text = trimmed(cell.text);
    row_.push_back(std::move(cell));
    if (table_.starts_with("\r\n"))
      take();
    if (table_.empty())
      return;
    if (take() == '\n')
      result_.rows.push_back(std::exchange(row_, {}));
    else if (table_.empty())
      row_.push_back({"", line_, column_});
  }

  void quoted(CsvCell& cell) {
    take();
    for (;;) {
      if (table_.empty()) {
        result_.failures.push_back({cell.line, cell.column, "the quote that begins here is not closed"});
        return;
      }
      const char c = take();
      if (c == '"' && table_.starts_with('"'))
        take();
      else if (c == '"')
        break;
      cell.text += c;
    }
    while (!ends_cell() && (table_.front() == ' ' || table_.front() == '\t'))
      take();
    if (!ends_cell())
      result_.failures.push_back(
          {line_, column_, "something stands behind a closing quote; a quote inside is written twice"});
    while (!ends_cell())
      take();
  }

  std::string_view table_;
  char separator_;
  std::size_t line_ = 1;
  std::size_t column_ = 1;
  std::vector<CsvCell> row_;
  CsvTable result_;
};

} // namespace

CsvTable read_csv(std::string_view table) {
  if (table.starts_with("\xEF\xBB\xBF"))
    table.remove_prefix(3);
  return CsvReader(table).read();
}

} // namespace sheerpole
