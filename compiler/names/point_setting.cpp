#include "names/point_setting.hpp"

#include "names/resolve.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace sheerpole {

namespace {

constexpr std::string_view axes = "xyz";

/// "mirrored" stands behind the place and its unit, before what it is known by.
std::string with_mirrored(const std::string& value) {
  const std::size_t close = value.rfind(')');
  std::size_t at = close == std::string::npos ? value.size() : close + 1;
  const std::size_t unit = value.find_first_not_of(' ', at);
  if (unit != std::string::npos) {
    const std::size_t end = std::min(value.find(' ', unit), value.size());
    if (find_unit(value.substr(unit, end - unit)) != nullptr)
      at = end;
  }
  return value.substr(0, at) + " mirrored" + value.substr(at);
}

std::string statement_of(const std::string& begin, const std::array<std::string, 3>& at,
                         const std::string& unit, bool mirrored) {
  return begin + "(" + at[0] + ", " + at[1] + ", " + at[2] + ")" + (unit.empty() ? "" : " " + unit) +
         (mirrored ? " mirrored" : "") + " }\n";
}

struct WrittenPlace {
  std::array<std::string, 3> at;
  std::string unit;
  bool mirrored = false;
};

/// A place taken apart as it is written: "(1, -2, 3) m mirrored". Nothing where it is not three numbers.
std::optional<WrittenPlace> taken_apart(const std::string& value) {
  const std::size_t close = value.rfind(')');
  if (!value.starts_with('(') || close == std::string::npos)
    return std::nullopt;
  WrittenPlace place;
  std::size_t axis = 0;
  int depth = 0;
  for (std::size_t i = 1; i < close; ++i) {
    const char sign = value[i];
    depth += sign == '(' ? 1 : sign == ')' ? -1 : 0;
    if (sign == ',' && depth == 0) {
      if (++axis == place.at.size())
        return std::nullopt;
    } else
      place.at[axis] += sign;
  }
  if (axis + 1 != place.at.size())
    return std::nullopt;
  const std::string behind = value.substr(close + 1);
  const std::size_t unit = behind.find_first_not_of(' ');
  if (unit != std::string::npos) {
    const std::string word = behind.substr(unit, behind.find(' ', unit) - unit);
    if (find_unit(word) != nullptr)
      place.unit = word;
  }
  place.mirrored = behind.find("mirrored") != std::string::npos;
  return place;
}

/// Whether a y is to port, which is negative; nothing where it is worked out and its text does not say.
std::optional<bool> is_to_port(const std::string& y) {
  const std::size_t first = y.find_first_not_of(' ');
  if (first == std::string::npos)
    return std::nullopt;
  const bool negative = y[first] == '-';
  const std::string_view rest = std::string_view(y).substr(first + (negative ? 1 : 0));
  const bool number = !rest.empty() && rest.front() >= '0' && rest.front() <= '9';
  if (!number || rest.find_first_of("+-*()") != std::string_view::npos)
    return std::nullopt;
  return negative;
}

} // namespace

bool is_side(const std::string& word) {
  return word == "port" || word == "starboard";
}

const Symbol& PointSettings::symbol_of(const std::string& name) {
  if (!files_) {
    DiagnosticSink silent; // what is wrong with the files is told when they are resolved with the settings
    files_ = resolve(trees_, nullptr, silent, as_of_);
  }
  const auto found = std::ranges::find_if(files_->symbols, [&](const Symbol& symbol) {
    return symbol.kind == Symbol::Kind::point && symbol.name == name;
  });
  return found == files_->symbols.end() ? files_->symbols.front() : *found;
}

std::string PointSettings::begin_of(const std::string& subject, const Property& stated) const {
  const auto frame = files_->frames.find(&stated);
  const std::string on = frame == files_->frames.end() ? "" : "on " + (*files_)[frame->second].name + " ";
  return "points " + on + "{ " + subject + ": ";
}

std::optional<PointSettings::Place> PointSettings::written_place(const std::string& subject,
                                                                 const Property* stated) const {
  if (stated == nullptr)
    return std::nullopt;
  const Expression& place = stated->value.expression();
  if (place.kind != ExpressionKind::vector || place.operands.size() != 3)
    return std::nullopt;
  Place written{begin_of(subject, *stated), {}, place.unit.missing() ? "" : place.unit.text, false};
  for (std::size_t i = 0; i < 3; ++i) {
    const Span span = place.operands[i].span;
    written.at[i] = sources_[span.source].text(span);
  }
  written.mirrored = stated->value.mirrored && subject.find('.') == std::string::npos;
  return written;
}

/// What is stated of both sides for no side, else of the one, where it is stated apart.
std::optional<PointSettings::Place> PointSettings::place_of(const Symbol& symbol,
                                                            const std::string& side) const {
  const std::string subject = symbol.name + (side.empty() ? "" : "." + side);
  if (const auto set = set_.find(subject); set != set_.end())
    return set->second;
  const Property* both = symbol.point != nullptr && symbol.point->side.missing() ? symbol.point : nullptr;
  return written_place(subject, side.empty() ? both : side == "port" ? symbol.port : symbol.starboard);
}

std::string PointSettings::set_whole(const Symbol& symbol, const std::string& side, const Property& stated,
                                     const std::string& value) {
  const bool mirrored = side.empty() && symbol.point != nullptr && symbol.point->value.mirrored &&
                        value.starts_with('(') && value.find("mirrored") == std::string::npos;
  const std::string subject = symbol.name + (side.empty() ? "" : "." + side);
  const std::string begin = begin_of(subject, stated);
  const std::string written = mirrored ? with_mirrored(value) : value;
  const std::optional<WrittenPlace> apart = taken_apart(written);
  set_[subject] = apart ? Place{begin, apart->at, apart->unit, apart->mirrored} : Place{};
  if (side.empty()) // it takes the place of what is stated of one side
    for (const char* one : {"port", "starboard"})
      set_[symbol.name + "." + one].reset();
  return begin + written + " }\n";
}

/// The other two coordinates stay as they stand. A point that is mirrored is stated for one side, and which
/// one its y says: of the other one y has the other sign. Empty where that cannot be told.
std::string PointSettings::set_coordinate(const Symbol& symbol, const std::string& side, std::size_t axis,
                                          const std::string& value) {
  std::string text;
  bool all = true;
  const auto set = [&](const std::string& subject, Place place) {
    all = all && !place.begin.empty();
    place.at[axis] = value;
    text += statement_of(place.begin, place.at, place.unit, place.mirrored);
    set_[subject] = std::move(place);
  };
  const std::optional<Place> both = place_of(symbol, "");
  if (!side.empty()) {
    const std::string subject = symbol.name + "." + side;
    if (auto apart = place_of(symbol, side)) {
      set(subject, std::move(*apart));
      return all ? text : "";
    }
    const Property* apart = side == "port" ? symbol.port : symbol.starboard;
    if ((apart != nullptr && !set_.contains(subject)) || !both || !both->mirrored)
      return {};
    const std::optional<bool> to_port = is_to_port(both->at[1]);
    if (symbol.point == nullptr || both->begin.empty() || !to_port)
      return {};
    Place place = *both;
    place.mirrored = false;
    place.begin = begin_of(subject, *symbol.point);
    if (*to_port != (side == "port"))
      place.at[1] = "-(" + place.at[1] + ")";
    set(subject, std::move(place));
    return all ? text : "";
  }
  // The statement for both sides first: it takes the place of what is stated of one.
  const std::array<std::string, 2> sides{"port", "starboard"};
  std::array<std::optional<Place>, 2> apart;
  for (std::size_t i = 0; i < sides.size(); ++i)
    apart[i] = place_of(symbol, sides[i]);
  if (both)
    set(symbol.name, *both);
  else if (symbol.point != nullptr && symbol.point->side.missing())
    return {}; // stated, and not as three numbers
  for (std::size_t i = 0; i < sides.size(); ++i)
    if (apart[i])
      set(symbol.name + "." + sides[i], std::move(*apart[i]));
    else if ((i == 0 ? symbol.port : symbol.starboard) != nullptr &&
             !set_.contains(symbol.name + "." + sides[i]))
      return {};
  return all ? text : "";
}

std::string PointSettings::statements(const std::vector<std::string>& path, const std::string& value) {
  const Symbol& symbol = symbol_of(path.front());
  const Property* stated = symbol.point != nullptr ? symbol.point : symbol.declared;
  if (stated == nullptr)
    return {};
  const std::string side = path.size() > 1 && is_side(path[1]) ? path[1] : "";
  const std::size_t named = side.empty() ? 1 : 2;
  if (path.size() == named)
    return set_whole(symbol, side, *stated, value);
  const std::string& last = path.back();
  const std::size_t axis = last.size() == 1 ? axes.find(last.front()) : std::string_view::npos;
  if (path.size() != named + 1 || axis == std::string_view::npos)
    return {};
  return set_coordinate(symbol, side, axis, value);
}

} // namespace sheerpole
