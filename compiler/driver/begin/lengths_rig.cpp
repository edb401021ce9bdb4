#include "driver/begin/lengths_rig.hpp"

#include "base/calendar_day.hpp"
#include "base/edit_distance.hpp"
#include "calculate/facts.hpp"
#include "diagnostics/excerpt.hpp"
#include "kinds/kind_row.hpp"
#include "service/begin/first_rig.hpp"
#include "service/compile.hpp"
#include "units/parse_quantity.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::size_t no_column = static_cast<std::size_t>(-1);

constexpr LengthsColumn all_columns[] = {
    {"stay", "", "which stay: \"Cap shroud\" becomes cap-shroud; needed"},
    {"side", "", "port, starboard or both; nothing: a stay on the centreline"},
    {"title", "", "what papers call the stay"},
    {"length", "runs",
     "pin to pin, with its unit: 11_642 mm, 38' 7 3/8\"; X, or nothing: the cord keeps it"},
    {"second-length", "runs", "the same, read once more"},
    {"method", "method", "how it was read: tape, cord, old-stay, laser"},
    {"cord", "cord", "which cord keeps it, by its colour: a length in the row is then that of the cord"},
    {"knots", "knots", "its tally: how many little knots in the tail"},
    {"mark", "mark", "what marks it on the cord, in words"},
    {"offset", "offset", "hook of the tape, or end of the cord, to the pin aloft; taken off"},
    {"hoist-offset", "hoist-offset", "how far below the pin aloft it was hoisted; added"},
    {"below-knot", "below-knot", "how far the pin at the deck lies below the knot"},
    {"pull", "pull", "on the tape or the cord: 50 N"},
    {"temperature", "temperature", "of the tape: 12 degC"},
    {"date", "date", "the day: 2026-05-02"},
    {"by", "by", "who read it"},
    {"note", "note", "wind, afloat or ashore"},
};

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

bool is_name(const std::string& name) {
  return !name.empty() && name.front() >= 'a' && name.front() <= 'z';
}

/// A property with its value, and the cell that it is from.
struct FromCell {
  std::string property;
  std::string value;
  CsvCell cell;
};

/// What one row says of a stay or of a side of it.
struct StayRow {
  CsvCell name;
  CsvCell length_cell;
  std::string length;            ///< empty: X
  std::vector<FromCell> reading; ///< empty: a stated length
};

/// The side of a row that holds for port and starboard alike.
constexpr std::string_view both = "both";

/// Whether a row of this side is all of its stay.
bool is_whole(std::string_view side) {
  return side.empty() || side == both;
}

struct NamedStay {
  std::string name;
  std::string title;
  std::map<std::string, StayRow> rows; ///< by side: "", "both", "port", "starboard"
};

using Row = std::vector<CsvCell>;

class LengthsReader {
public:
  LengthsReader(std::string_view table, const std::string& name, FirstLine line)
      : table_(read_csv(table)), name_(name), line_(line) {
    columns_.fill(no_column);
  }

  /// For stays of a rig that is there.
  LengthsReader(std::string_view table, const std::string& name, const Rig& rig)
      : LengthsReader(table, name, FirstLine::wire) {
    rig_ = &rig;
  }

  Result<SheetReadings, std::vector<TableFailure>> run_for_rig() {
    read_rows();
    if (!failures_.empty())
      return failures_;
    SheetReadings result;
    result.empty_rows = empty_rows_;
    for (const auto& [name, cell] : cords_)
      if (find_record(*rig_, RecordKind::cord, name) == nullptr) {
        result.text += "\n";
        put(result.text, fmt::format("cord {} \"{}\" {{", name, escaped(cell.text)), cell);
        result.text += "}\n";
      }
    for (const NamedStay& stay : stays_)
      for (const auto& [side, row] : stay.rows) {
        const std::vector<std::string> sides =
            side == both ? std::vector<std::string>{".port", ".starboard"}
                         : std::vector<std::string>{side.empty() ? "" : "." + side};
        for (const std::string& one : sides) {
          write_reading(result.text, stay.name + one, row);
          ++result.readings;
        }
      }
    result.origins = origins_;
    return result;
  }

  Result<std::string, std::vector<TableFailure>> run(const std::string& boat) {
    read_rows();
    if (failures_.empty() && stays_.empty())
      failures_.push_back({1, 1, "there is no stay in the table"});
    if (!failures_.empty())
      return failures_;
    std::string text = written(boat);
    find_errors(text);
    if (!failures_.empty())
      return failures_;
    return text;
  }

private:
  void read_rows() {
    failures_ = std::move(table_.failures);
    for (const Row& row : table_.rows)
      for (const CsvCell& cell : row)
        if (printable(cell.text) != cell.text)
          fail(cell, "`" + cell.text + "` holds a line end or a sign that does not show");
    if (failures_.empty() && find_columns())
      for (std::size_t i = 1; i < table_.rows.size(); ++i)
        read_row(table_.rows[i]);
  }

  /// Whether nothing but which stay it is stands in a row.
  bool is_blank(const Row& row) const {
    return std::all_of(std::begin(all_columns), std::end(all_columns), [&](const LengthsColumn& one) {
      return one.heading == "stay" || one.heading == "side" || one.heading == "title" ||
             cell(row, one.heading).text.empty();
    });
  }

  /// Whether the rig has this stay, with this side; tells what it has instead.
  bool is_of_rig(const CsvCell& name_cell, const CsvCell& side_cell, const std::string& name,
                 const std::string& side) {
    std::vector<std::string> known;
    bool found = false;
    bool paired = false;
    for (const Stay& stay : rig_->stays) {
      known.push_back(stay.base);
      found = found || stay.base == name;
      paired = paired || (stay.base == name && stay.side != Side::centre);
    }
    if (!found)
      fail(name_cell, "the rig file has no stay " + name + did_you_mean(name, known));
    else if (paired && side.empty())
      fail(name_cell, name + " has two sides; write port, starboard or both under side");
    else if (!paired && !side.empty())
      fail(side_cell, name + " has no sides; leave the side out");
    else
      return true;
    return false;
  }

  void fail(const CsvCell& cell, std::string words) {
    failures_.push_back({cell.line, cell.column, std::move(words)});
  }

  static std::size_t index_of(std::string_view heading) {
    const auto found = std::find_if(std::begin(all_columns), std::end(all_columns),
                                    [&](const LengthsColumn& one) { return one.heading == heading; });
    return static_cast<std::size_t>(found - std::begin(all_columns));
  }
  std::size_t& column(std::string_view heading) { return columns_[index_of(heading)]; }
  std::size_t column(std::string_view heading) const { return columns_[index_of(heading)]; }

  static std::string headings_said() {
    std::string words;
    for (std::size_t i = 0; i < std::size(all_columns); ++i)
      words += (i == 0                            ? ""
                : i + 1 == std::size(all_columns) ? " and "
                                                  : ", ") +
               std::string(all_columns[i].heading);
    return words;
  }

  bool find_columns() {
    if (table_.rows.empty()) {
      failures_.push_back({1, 1,
                           "the table is empty; its first row holds the headings stay, length and, as "
                           "wanted, others: see docs/begin/README.md"});
      return false;
    }
    const Row& headings = table_.rows.front();
    for (const CsvCell& cell : headings) {
      const std::size_t i = index_of(name_from(cell.text));
      if (i == std::size(all_columns)) {
        if (!cell.text.empty())
          fail(cell,
               "the heading `" + cell.text + "` is none of " + headings_said() + "; take its column out");
      } else if (columns_[i] != no_column) {
        fail(cell, "the heading " + std::string(all_columns[i].heading) + " stands there twice");
      } else {
        columns_[i] = static_cast<std::size_t>(&cell - headings.data());
      }
    }
    const bool says_length =
        column("length") != no_column || column("cord") != no_column || column("mark") != no_column;
    if (failures_.empty() && (column("stay") == no_column || !says_length))
      fail(headings.front(),
           "the first row holds the headings: stay, and length, cord or mark; the others as wanted");
    return failures_.empty();
  }

  /// The cell of a column; where the row is shorter an empty one, at the end of the row.
  CsvCell cell(const Row& row, std::string_view heading) const {
    const std::size_t at = column(heading);
    return at < row.size() ? row[at] : CsvCell{"", row.back().line, row.back().column};
  }

  /// A cell that stands in no column that is read. One that is empty is but a comma too many.
  bool beyond(const Row& row) {
    const Row& headings = table_.rows.front();
    for (std::size_t i = 0; i < row.size(); ++i)
      if (!row[i].text.empty() && (i >= headings.size() || headings[i].text.empty())) {
        fail(row[i], "`" + row[i].text + "` stands under no heading" +
                         (i > 0 ? comma_words(row[i - 1].text, row[i].text) : ""));
        return true;
      }
    return false;
  }

  /// What to say where a comma has parted a number in two: `10` and `95 m`. Whether it was meant for a
  /// point or parts thousands nobody can know.
  static std::string comma_words(std::string_view before, std::string_view behind) {
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (before.empty() || behind.empty() || !std::all_of(before.begin(), before.end(), digit) ||
        !digit(behind.front()))
      return {};
    return fmt::format("; a comma parts numbers, and `{0},{1}` is two: write {0}.{1}, or {0}_{1} where the "
                       "comma stands for thousands",
                       before, behind);
  }

  /// The same of one cell, or of this one and the next.
  std::string comma_words(const CsvCell& at) const {
    if (const std::size_t comma = at.text.find(','); comma != std::string::npos)
      return comma_words(std::string_view(at.text).substr(0, comma),
                         std::string_view(at.text).substr(comma + 1));
    for (const Row& row : table_.rows)
      for (std::size_t i = 0; i + 1 < row.size(); ++i)
        if (row[i].line == at.line && row[i].column == at.column)
          return comma_words(row[i].text, row[i + 1].text);
    return {};
  }

  void read_row(const Row& row) {
    if (row.size() == 1 && row.front().text.empty())
      return; // an empty line
    if (beyond(row))
      return;
    const CsvCell name_cell = cell(row, "stay");
    const CsvCell side_cell = cell(row, "side");
    const std::string name = name_from(name_cell.text);
    const std::string side = name_from(side_cell.text);
    if (!is_name(name))
      return fail(name_cell, "the stay has no name that begins with a letter");
    if (rig_ == nullptr && name.starts_with("first-"))
      return fail(name_cell, "names that begin with `first-` are those of the assumed hardware; call " +
                                 name + " something else");
    if (side != "" && side != "port" && side != "starboard" && side != both)
      return fail(side_cell, "the side of " + name + " is `" + side_cell.text +
                                 "`; write port, starboard or both, or nothing");
    if (rig_ != nullptr && !is_of_rig(name_cell, side_cell, name, side))
      return;
    if (rig_ != nullptr && is_blank(row)) {
      ++empty_rows_;
      return;
    }
    const std::size_t failed = failures_.size();
    StayRow read = row_of(row, name);
    read.name = name_cell;
    if (rig_ != nullptr && failures_.size() == failed && !says_how(read))
      fail(read.length_cell, "the length of " + name +
                                 " does not say how it was read; write tape, cord, old-stay or "
                                 "laser under method");
    if (failures_.size() > failed)
      return;
    auto [known, added] = places_.try_emplace(name, stays_.size());
    if (added)
      stays_.push_back({name, cell(row, "title").text, {}});
    NamedStay& stay = stays_[known->second];
    const bool clash = stay.rows.count(side) > 0 ||
                       (!stay.rows.empty() && (is_whole(side) || is_whole(stay.rows.begin()->first)));
    if (clash)
      return fail(name_cell, name + (side.empty() ? "" : " " + side) + " stands in the table twice");
    const CsvCell title = rig_ != nullptr ? CsvCell{} : cell(row, "title");
    if (stay.title.empty())
      stay.title = title.text;
    if (!title.text.empty() && title.text != stay.title)
      return fail(title, name + " has the title `" + stay.title + "` in a row above, and `" + title.text +
                             "` here");
    stay.rows[side] = std::move(read);
  }

  static bool says_how(const StayRow& row) {
    return std::any_of(row.reading.begin(), row.reading.end(),
                       [](const FromCell& one) { return one.property == "method"; });
  }

  /// The length of a row and how it was read. What cannot be is told, and the rest of the row read on.
  StayRow row_of(const Row& row, const std::string& name) {
    StayRow result;
    const CsvCell length = cell(row, "length");
    result.length_cell = length;
    const CsvCell second = cell(row, "second-length");
    const CsvCell cord = cell(row, "cord");
    const bool on_cord = !cord.text.empty() || !cell(row, "mark").text.empty();
    const bool unknown = length.text == "X" || length.text == "x" || (length.text.empty() && on_cord);
    if (!unknown && good(length, name, length_word, "runs"))
      result.length = length.text;
    if (!second.text.empty() && unknown)
      fail(second, "the second length of " + name + ", `" + second.text + "`, has no first one beside it");
    else if (!second.text.empty() && good(second, name, "second length", "runs"))
      result.length += ", " + second.text;
    for (const LengthsColumn& one : all_columns)
      if (!one.property.empty() && one.property != "runs")
        if (const CsvCell at = cell(row, one.heading); !at.text.empty())
          take(at, name, one, result);
    if (!cell(row, "knots").text.empty() && cord.text.empty())
      fail(cell(row, "knots"),
           "the knots of " + name + " are on no cord; say which under the heading cord");
    if (on_cord && cell(row, "method").text.empty())
      result.reading.insert(result.reading.begin(), {"method", "messenger", cord});
    if (unknown && !on_cord && cell(row, "knots").text.empty() && !result.reading.empty())
      fail(length, "the length of " + name + " is X, and neither cord nor mark keeps it");
    const bool read = !result.reading.empty() || result.length.find(',') != std::string::npos;
    if (read && !result.length.empty())
      result.reading.push_back({on_cord ? "cord-length" : "runs", result.length + as_measured(), length});
    return result;
  }

  /// A cell of a reading, by what the language takes there.
  void take(const CsvCell& at, const std::string& name, const LengthsColumn& column, StayRow& result) {
    const std::string property(column.property);
    const PropertyRow& row = *find_property(find_kind("reading")->properties, column.property);
    const std::string word(column.heading);
    std::string value = at.text;
    switch (row.type) {
    case ValueType::quantity:
      if (!good(at, name, word, property))
        return;
      value += as_measured();
      break;
    case ValueType::choice:
      value = name_from(at.text) == "cord" ? "messenger" : name_from(at.text);
      if (std::find(row.choices.begin(), row.choices.end(), value) == row.choices.end())
        return fail(at, "the method of " + name + ", `" + at.text +
                            "`, is none of tape, cord, old-stay and laser");
      break;
    case ValueType::date:
      if (!parse_day(at.text))
        return fail(at, "the date of " + name + ", `" + at.text + "`, is no day; write it as 2026-05-02");
      break;
    case ValueType::count:
      if (const auto number = parse_number(at.text);
          !number.ok() || number.value() < row.least || number.value() > row.most ||
          at.text.find_first_not_of("0123456789") != std::string::npos)
        return fail(at, fmt::format("the knots of {}, `{}`, are no whole number from {} to {}", name,
                                    at.text, row.least, row.most));
      break;
    case ValueType::reference:
      value = name_from(at.text);
      if (!is_name(value))
        return fail(at, "the cord of " + name + " has no name that begins with a letter");
      if (std::none_of(cords_.begin(), cords_.end(), [&](const auto& one) { return one.first == value; }))
        cords_.emplace_back(value, at);
      break;
    default:
      value = "\"" + escaped(at.text) + "\"";
    }
    result.reading.push_back({property, value, at});
  }

  /// Whether a cell is a quantity that this property of a reading takes; tells why not.
  bool good(const CsvCell& at, const std::string& name, std::string_view word, std::string_view property) {
    const PropertyRow& row = *find_property(find_kind("reading")->properties, property);
    const bool is_length = row.dimension == dimension::length;
    const auto quantity = parse_quantity(at.text);
    if (!quantity.ok() || quantity.value().dimension != row.dimension) {
      const std::string comma = comma_words(at);
      fail(at, fmt::format("the {} of {}, `{}`, cannot be read{}", word, name, at.text,
                           !comma.empty() ? comma
                           : property == "runs"
                               ? "; write it with its unit, such as 11_642 mm or 38' 7 3/8\""
                               : fmt::format("; write it with its unit, such as {}", row.example)));
      return false;
    }
    // A length from pin to pin has hardware in it, so the shortest is that of a stay.
    const PropertyRow& range =
        property == "runs" ? *find_property(find_kind("stay")->properties, "pin-to-pin") : row;
    if (quantity.value().si < range.least || quantity.value().si > range.most) {
      fail(at, is_length ? fmt::format("the {} of {}, `{}`, is not from {} mm to {} m", word, name, at.text,
                                       range.least * 1000, range.most)
                         : fmt::format("the {} of {}, `{}`, cannot be", word, name, at.text));
      return false;
    }
    return true;
  }

  std::string as_measured() const { return " measured \"" + escaped(name_) + "\""; }

  /// Adds a line of the file, and keeps from which cell it is.
  void put(std::string& text, const std::string& line, const CsvCell& from) {
    origins_[static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1] = from;
    text += line + "\n";
  }

  std::string written(const std::string& boat) {
    const std::string line = line_ == FirstLine::wire ? "wire" : "rope";
    std::string text =
        "language 1\n\n" +
        first_head(
            "Made from the lengths in " + name_ + ", in " + line,
            {"Put your own hardware in the place of what begins with `first-`: measure it, and write "
             "`measured` for `assumed`.",
             "Say how far each adjuster was open when the stay was measured."});
    text += fmt::format("boat \"{}\" {{\n}}\n\n", escaped(boat));
    const std::vector<std::string> stack = stack_of("tang, screw, plate", line_);
    std::vector<std::string> items{"first-" + line};
    items.insert(items.end(), stack.begin(), stack.end());
    text += hardware_of(items, line_);
    for (const auto& [name, cell] : cords_) {
      text += "\n";
      put(text, fmt::format("cord {} \"{}\" {{", name, escaped(cell.text)), cell);
      text += "}\n";
    }
    for (const NamedStay& stay : stays_)
      write(text, stay, stack);
    return text;
  }

  void write(std::string& text, const NamedStay& stay, const std::vector<std::string>& stack) {
    const std::string title = stay.title.empty() ? "" : fmt::format(" \"{}\"", escaped(stay.title));
    text += "\n";
    put(text, fmt::format("stay {}{} {{", stay.name, title), stay.rows.begin()->second.name);
    const auto& [first_side, first_row] = *stay.rows.begin();
    if (!first_side.empty()) {
      std::string sides;
      for (const auto& [side, row] : stay.rows)
        sides += (sides.empty() ? "" : ", ") + (side == both ? "port, starboard" : side);
      text += fmt::format("  sides: {}\n", sides);
    }
    if (is_whole(first_side))
      state_length(text, first_row);
    text += fmt::format("  line: first-{}\n  stack {{\n", line_ == FirstLine::wire ? "wire" : "rope");
    for (const std::string& item : stack)
      text += "    " + as_it_was(item) + "\n";
    text += "  }\n}\n";
    for (const auto& [side, row] : stay.rows) {
      if (side == both) { // what was read holds for each of the two
        for (const char* one : {".port", ".starboard"})
          write_reading(text, stay.name + one, row);
        continue;
      }
      const std::string of = stay.name + (side.empty() ? "" : "." + side);
      if (!side.empty() && row.reading.empty() && !row.length.empty()) {
        text += "\n";
        put(text, fmt::format("stay {} {{", of), row.name);
        state_length(text, row);
        text += "}\n";
      }
      write_reading(text, of, row);
    }
  }

  void write_reading(std::string& text, const std::string& of, const StayRow& row) {
    if (row.reading.empty())
      return;
    text += "\n";
    put(text, fmt::format("reading of {} {{", of), row.name);
    for (const FromCell& one : row.reading)
      put(text, fmt::format("  {}: {}", one.property, one.value), one.cell);
    text += "}\n";
  }

  void state_length(std::string& text, const StayRow& row) {
    if (row.reading.empty() && !row.length.empty())
      put(text, fmt::format("  pin-to-pin: {}{}", row.length, as_measured()), row.length_cell);
  }

  /// What the compiler refuses of the file is told of the cell that it is from.
  void find_errors(const std::string& text) {
    OneTextReader reader("boat.rig", text);
    const Compilation made = compile("boat.rig", reader, {});
    for (const Diagnostic& finding : made.findings) {
      if (finding.severity != Severity::error)
        continue;
      const Span span = finding.primary ? finding.primary->span : Span{};
      // The stack of a stay is from no cell: the line above it that is from one is meant.
      const auto next = origins_.upper_bound((*made.sources)[span.source].position(span.begin).line);
      fail(next != origins_.begin() ? std::prev(next)->second : CsvCell{"", 1, 1}, finding.message);
    }
  }

  /// The setting of an adjuster is what it was when the stay was measured, and nobody has said so.
  static std::string as_it_was(std::string item) {
    if (const std::size_t at = std::min(item.find("(open: "), item.find("(gap: ")); at != std::string::npos)
      item.insert(item.find(')', at), " assumed \"as it was when you measured?\"");
    return item;
  }

  static constexpr std::string_view length_word = "length";

  CsvTable table_;
  std::string name_;
  FirstLine line_;
  const Rig* rig_ = nullptr;   ///< for whose stays it is; null: they are made of the table
  std::size_t empty_rows_ = 0; ///< with `rig_`
  std::array<std::size_t, std::size(all_columns) + 1> columns_; ///< the last: no such heading
  std::vector<NamedStay> stays_;
  std::map<std::string, std::size_t> places_;          ///< of each name in `stays_`
  std::vector<std::pair<std::string, CsvCell>> cords_; ///< in the order of the table
  std::map<std::size_t, CsvCell> origins_;             ///< of lines of the file, from 1
  std::vector<TableFailure> failures_;
};

} // namespace

std::span<const LengthsColumn> lengths_columns() {
  return all_columns;
}

Result<std::string, std::vector<TableFailure>> lengths_rig(std::string_view table, const std::string& name,
                                                           const std::string& boat, FirstLine line) {
  return LengthsReader(table, name, line).run(boat);
}

Result<SheetReadings, std::vector<TableFailure>> sheet_readings(std::string_view table,
                                                                const std::string& name, const Rig& rig) {
  return LengthsReader(table, name, rig).run_for_rig();
}

} // namespace sheerpole
