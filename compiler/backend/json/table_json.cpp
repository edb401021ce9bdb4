#include "backend/json/table_json.hpp"

#include "backend/json/json.hpp"
#include "units/shortest_digits.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace sheerpole {

namespace {

/// Units in which headings end and numbers are written.
constexpr std::array<std::string_view, 12> units{"mm", "turns", "degC", "kN",    "kg m", "kg",
                                                 "%",  "ft in", "m",    "steps", "deg",  "N"};

bool is_letter_or_digit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

/// The unit of a column, empty for none.
std::string_view unit_of(const Column& column) {
  if (!column.unit.empty())
    return column.unit;
  const std::string_view heading = column.heading;
  for (const std::string_view unit : units)
    if (heading == unit || (heading.ends_with(unit) && heading[heading.size() - unit.size() - 1] == ' '))
      return unit;
  return {};
}

/// Small letters, digits and `_`; signs that tell columns apart become words.
std::string plain_name(std::string_view heading) {
  std::string name;
  const auto add_word = [&name](std::string_view word) {
    if (!name.empty() && name.back() != '_')
      name += '_';
    name += word;
    name += '_';
  };
  for (std::size_t i = 0; i < heading.size(); ++i) {
    const char c = heading[i];
    const bool begins = i == 0 || heading[i - 1] == ' ';
    if (is_letter_or_digit(c))
      name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    else if (heading.substr(i).starts_with("±"))
      add_word("plus_minus");
    else if (c == '%')
      add_word("percent");
    else if (c == '+')
      add_word("plus");
    else if (c == '-' && (begins || i + 1 == heading.size()))
      add_word("minus");
    else if (!name.empty() && name.back() != '_')
      name += '_';
  }
  while (name.ends_with('_'))
    name.pop_back();
  return name.empty() ? "number" : name;
}

/// Each once: a later one of the same name gets a number.
std::vector<std::string> names_of(const std::vector<Column>& columns) {
  std::vector<std::string> names;
  std::set<std::string> taken;
  for (const Column& column : columns) {
    std::string name = plain_name(column.heading);
    if (!column.unit.empty())
      name += '_' + plain_name(column.unit);
    const std::string base = name;
    for (int i = 2; !taken.insert(name).second; ++i)
      name = base + '_' + std::to_string(i);
    names.push_back(std::move(name));
  }
  return names;
}

/// The number that a text begins with, taken off it: with a sign or without, digits, at most one point.
std::optional<double> take_number(std::string_view& text) {
  std::string_view digits = text;
  if (digits.starts_with('+'))
    digits.remove_prefix(1);
  const auto is_digit = [&](std::size_t at) {
    return at < digits.size() && digits[at] >= '0' && digits[at] <= '9';
  };
  std::size_t end = digits.starts_with('-') ? 1 : 0;
  if (!is_digit(end))
    return std::nullopt;
  while (is_digit(end))
    ++end;
  if (end < digits.size() && digits[end] == '.' && is_digit(end + 1))
    for (++end; is_digit(end);)
      ++end;
  const ReadDigits read = read_digits(digits.substr(0, end));
  if (read.fault != DigitsFault::none)
    return std::nullopt;
  const double value = read.value;
  text = digits.substr(end);
  return value == 0.0 ? 0.0 : value; // no minus before nothing
}

Json length_with_x(bool unknown, double known_mm) {
  return {{"unknown", unknown}, {"known_mm", known_mm}};
}

/// "11641.7", "X", "X - 4.0", "X(forestay) + 12.3"; null when it is none of these.
Json length_json(std::string_view cell) {
  const bool unknown = cell.starts_with('X');
  if (unknown) {
    cell.remove_prefix(cell.starts_with("X(") ? std::min(cell.find(')'), cell.size() - 1) + 1 : 1);
    if (cell.empty())
      return length_with_x(true, 0.0);
    if (!cell.starts_with(" + ") && !cell.starts_with(" - "))
      return {};
  }
  const bool minus = cell.starts_with(" - ");
  if (unknown)
    cell.remove_prefix(3);
  const auto known = take_number(cell);
  return known && cell.empty() ? length_with_x(unknown, minus ? -*known : *known) : Json();
}

Json cell_json(const Column& column, std::string_view cell) {
  if (cell.empty())
    return {};
  if (column.plus_x)
    if (Json length = length_json(cell); !length.is_null())
      return length;
  if (!column.right)
    return cell;
  std::string_view rest = cell;
  const auto number = take_number(rest);
  if (!number)
    return cell;
  const std::string_view unit = unit_of(column);
  if (rest.empty() || (rest.starts_with(' ') && rest.substr(1) == unit))
    return *number;
  // A column whose rows differ in what they are measured in.
  if (unit.empty() && rest.starts_with(' ') &&
      std::find(units.begin(), units.end(), rest.substr(1)) != units.end())
    return {{"value", *number}, {"unit", rest.substr(1)}};
  return cell;
}

Json columns_json(const std::vector<Column>& columns, const std::vector<std::string>& names) {
  Json json = Json::array();
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::string_view unit = columns[i].right ? unit_of(columns[i]) : std::string_view();
    json.push_back({{"name", names[i]},
                    {"heading", columns[i].heading},
                    {"holds", columns[i].plus_x  ? "length"
                              : columns[i].right ? "number"
                                                 : "text"},
                    {"unit", unit.empty() ? Json() : Json(unit)}});
  }
  return json;
}

} // namespace

std::string render_json(const Table& table, const TableOf& of) {
  const std::vector<std::string> names = names_of(table.columns);
  Json rows = Json::array();
  for (const std::vector<std::string>& row : table.rows) {
    JsonObject object(row.size());
    for (std::size_t i = 0; i < row.size(); ++i)
      object.add(names[i].c_str(), cell_json(table.columns[i], row[i]));
    rows.push_back(object.take());
  }
  return write_json({{"format", "sheerpole-table"},
                     {"version", table_json_version},
                     {"table", of.table},
                     {"boat", of.boat ? Json(*of.boat) : Json()},
                     {"draft", of.boat ? Json(of.draft) : Json()},
                     {"title", table.title.empty() ? Json() : Json(table.title)},
                     {"columns", columns_json(table.columns, names)},
                     {"rows", std::move(rows)},
                     {"notes", table.notes}});
}

} // namespace sheerpole
