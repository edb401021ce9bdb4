#include "names/point_setting.hpp"

#include "names/resolve.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <array>
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

/// The statement with another x, y or z; empty when it is not stated as three numbers. A point that is
/// mirrored is stated for one side, and which one its y says: of the other one (`other_side`) y has the
/// other sign.
std::string PointSettings::with_coordinate(const Property& stated, const std::string& subject,
                                           std::size_t axis, const std::string& value, bool other_side) {
  const Expression& place = stated.value.expression();
  if (place.kind != ExpressionKind::vector || place.operands.size() != 3)
    return {};
  std::string text = begin_of(subject, stated);
  std::array<std::string, 3>& set = set_[subject];
  set[axis] = value;
  for (std::size_t i = 0; i < 3; ++i) {
    const Span span = place.operands[i].span;
    std::string each(sources_[span.source].text(span));
    if (other_side && axes[i] == 'y')
      each = "-(" + each + ")";
    text += (i == 0 ? "(" : ", ") + (set[i].empty() ? each : set[i]);
  }
  const bool both = stated.value.mirrored && subject.find('.') == std::string::npos;
  return text + ")" + (place.unit.missing() ? "" : " " + place.unit.text) + (both ? " mirrored" : "") +
         " }\n";
}

std::string PointSettings::coordinate_statements(const Symbol& symbol, const std::string& side,
                                                 std::size_t axis, const std::string& value) {
  const Property* both = symbol.point != nullptr && symbol.point->side.missing() ? symbol.point : nullptr;
  std::string text;
  bool all = true;
  const auto add = [&](const Property& stated, const std::string& subject, bool other_side = false) {
    const std::string one = with_coordinate(stated, subject, axis, value, other_side);
    all = all && !one.empty();
    text += one;
  };
  if (!side.empty()) {
    const Property* apart = side == "port" ? symbol.port : symbol.starboard;
    if (apart != nullptr)
      add(*apart, symbol.name + "." + side);
    else if (both != nullptr && both->value.mirrored) {
      const Expression& place = both->value.expression();
      // To port is negative; a y that is worked out does not say by its text which side it is.
      const bool three = place.kind == ExpressionKind::vector && place.operands.size() == 3;
      const ExpressionKind y = three ? place.operands[1].kind : ExpressionKind::vector;
      const bool negative = y == ExpressionKind::negate;
      if (!negative && y != ExpressionKind::number && y != ExpressionKind::length)
        return {};
      add(*both, symbol.name + "." + side, negative != (side == "port"));
    } else
      return {};
    return all ? text : "";
  }
  // The statement for both sides first: it takes the place of what is stated of one.
  if (both != nullptr)
    add(*both, symbol.name);
  for (const Property* apart : {symbol.port, symbol.starboard})
    if (apart != nullptr)
      add(*apart, symbol.name + "." + apart->side.text);
  return all ? text : "";
}

std::string PointSettings::statements(const std::vector<std::string>& path, const std::string& value) {
  const Symbol& symbol = symbol_of(path.front());
  const Property* stated = symbol.point != nullptr ? symbol.point : symbol.declared;
  if (stated == nullptr)
    return {};
  const bool of_side = path.size() > 1 && is_side(path[1]);
  const std::size_t named = of_side ? 2 : 1;
  if (path.size() == named) {
    const bool mirrored = !of_side && symbol.point != nullptr && symbol.point->value.mirrored &&
                          value.starts_with('(') && value.find("mirrored") == std::string::npos;
    const std::string subject = symbol.name + (of_side ? "." + path[1] : "");
    return begin_of(subject, *stated) + (mirrored ? with_mirrored(value) : value) + " }\n";
  }
  const std::string& last = path.back();
  const std::size_t axis = last.size() == 1 ? axes.find(last.front()) : std::string_view::npos;
  if (path.size() != named + 1 || axis == std::string_view::npos)
    return {};
  return coordinate_statements(symbol, of_side ? path[1] : "", axis, value);
}

} // namespace sheerpole
