#include "names/what_if.hpp"

#include "base/edit_distance.hpp"
#include "kinds/kind_row.hpp"
#include "syntax/parse.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(" \t\r\n");
  if (begin == std::string::npos)
    return {};
  return text.substr(begin, text.find_last_not_of(" \t\r\n") - begin + 1);
}

std::vector<std::string> parts_of(const std::string& path) {
  std::vector<std::string> result{""};
  for (const char c : path) {
    if (c == '.')
      result.emplace_back();
    else
      result.back() += c;
  }
  return result;
}

/// What a name at the head of a path is declared as.
struct Declared {
  enum class Sort { let, point, declaration };
  std::string name;
  Sort sort = Sort::let;
  std::string kind = {};
  std::string on = {};             ///< of a point: the spar from whose heel it is stated; empty: boat axes
  const Property* point = nullptr; ///< its statement for one place or for both sides, if there is one
};

std::vector<Declared> declared_in(const std::vector<std::shared_ptr<const SyntaxTree>>& trees) {
  std::vector<Declared> result;
  for (const auto& tree : trees)
    for (const Statement& statement : tree->statements) {
      if (const auto* let = std::get_if<Let>(&statement))
        result.push_back({let->name.text, Declared::Sort::let});
      const auto* declaration = std::get_if<Declaration>(&statement);
      if (declaration == nullptr)
        continue;
      if (declaration->kind.text == "boat")
        result.push_back({"boat", Declared::Sort::declaration, "boat"});
      if (declaration->kind.text == "points") {
        for (const Entry& entry : declaration->block.entries)
          if (const auto* point = std::get_if<Property>(&entry)) {
            const auto before =
                std::ranges::find(result, std::pair(point->name.text, Declared::Sort::point),
                                  [](const Declared& one) { return std::pair(one.name, one.sort); });
            if (point->side.missing() || before == result.end())
              result.push_back({point->name.text,
                                Declared::Sort::point,
                                {},
                                declaration->on.text,
                                point->side.missing() ? point : nullptr});
          }
      } else if (!declaration->name.missing()) {
        result.push_back({declaration->name.text, Declared::Sort::declaration, declaration->kind.text});
      }
    }
  return result;
}

bool is_side(const std::string& word) {
  return word == "port" || word == "starboard";
}

/// Whether a place that is set says nothing of the sides, though the file states both in one.
bool lacks_mirrored(const Declared& head, const std::string& value) {
  return head.point != nullptr && head.point->value.mirrored && value.starts_with('(') &&
         value.find("mirrored") == std::string::npos;
}

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

/// The place of a point with another x, y or z; empty when the file does not state it as three numbers.
std::string with_coordinate(const Declared& head, const std::string& axis, const std::string& value,
                            const SourceSet& sources) {
  constexpr std::string_view axes = "xyz";
  if (head.point == nullptr || axis.size() != 1 || axes.find(axis) == std::string_view::npos)
    return {};
  const Expression& place = head.point->value.expression();
  if (place.kind != ExpressionKind::vector || place.operands.size() != 3)
    return {};
  std::string text;
  for (std::size_t i = 0; i < 3; ++i)
    text += (i == 0 ? "(" : ", ") +
            (axes[i] == axis.front()
                 ? value
                 : std::string(sources[place.operands[i].span.source].text(place.operands[i].span)));
  return text + ")" + (place.unit.missing() ? "" : " " + place.unit.text) +
         (head.point->value.mirrored ? " mirrored" : "");
}

/// The declaration that says the same; empty when the path does not fit what its head is.
std::string statement(const Declared& head, const std::vector<std::string>& path, const std::string& value,
                      const SourceSet& sources) {
  switch (head.sort) {
  case Declared::Sort::let:
    return path.size() == 1 ? "let " + head.name + " = " + value : "";
  case Declared::Sort::point: {
    const std::string begin = (head.on.empty() ? "points { " : "points on " + head.on + " { ") + head.name;
    if (path.size() == 2 && !is_side(path[1])) {
      const std::string place = with_coordinate(head, path[1], value, sources);
      return place.empty() ? "" : begin + ": " + place + " }";
    }
    if (path.size() == 1 && lacks_mirrored(head, value))
      return begin + ": " + with_mirrored(value) + " }";
    if (path.size() <= 2)
      return begin + (path.size() == 2 ? "." + path[1] : "") + ": " + value + " }";
    return "";
  }
  case Declared::Sort::declaration:
    break;
  }
  if (head.kind == "boat")
    return path.size() == 2 ? "boat { " + path[1] + ": " + value + " }" : "";
  std::string begin = head.kind + " " + head.name;
  std::size_t at = 1;
  if (head.kind == "stay" && path.size() > 2 && is_side(path[1])) {
    begin += "." + path[1];
    ++at;
  }
  if (path.size() == at + 1)
    return begin + " { " + path[at] + ": " + value + " }";
  if (head.kind == "stay" && path.size() == at + 2)
    return begin + " { changes { " + path[at] + " (" + path[at + 1] + ": " + value + ") } }";
  return "";
}

/// The declaration of a wish: of what, which property, its value. Empty when one of the three is not there.
std::string wish_statement(const std::string& wish) {
  const std::string words = trimmed(wish);
  const std::size_t first = words.find(' ');
  const std::size_t second = first == std::string::npos ? first : words.find(' ', first + 1);
  if (second == std::string::npos || words.find_first_of("\r\n{}") != std::string::npos)
    return {};
  const std::string property = words.substr(first + 1, second - first - 1);
  return (property == "tension" ? "tension-wish of " : "mast-wish of ") + words.substr(0, first) + " { " +
         property + ": " + trimmed(words.substr(second)) + " }";
}

} // namespace

std::shared_ptr<const SyntaxTree> read_what_if(const std::vector<std::string>& settings,
                                               const std::vector<std::string>& wishes,
                                               const std::vector<std::shared_ptr<const SyntaxTree>>& trees,
                                               SourceSet& sources, DiagnosticSink& sink) {
  if (settings.empty() && wishes.empty())
    return nullptr;
  const std::vector<Declared> known = declared_in(trees);
  std::vector<std::string> names;
  for (const Declared& each : known)
    names.push_back(each.name);
  std::string text = "language 1\n";
  bool good = true;
  for (const std::string& setting : settings) {
    const std::size_t equals = setting.find('=');
    const std::string path = trimmed(setting.substr(0, equals));
    const std::string value = equals == std::string::npos ? "" : trimmed(setting.substr(equals + 1));
    const std::vector<std::string> parts = parts_of(path);
    const Declared* head = nullptr;
    for (const Declared& each : known)
      if (each.name == parts.front())
        head = &each;
    std::string reason;
    std::string line;
    if (equals == std::string::npos || path.empty() || value.empty())
      reason = "write it as name=value";
    else if (value.find_first_of("\r\n") != std::string::npos)
      reason = "the value goes over the end of a line";
    else if (head == nullptr && parts.front() == "boat")
      reason = "no boat is declared";
    else if (head == nullptr)
      reason = "nothing of the name " + parts.front() + " is declared";
    else if ((line = statement(*head, parts, value, sources)).empty())
      reason = "nothing at that path can be set";
    if (head == nullptr && reason.starts_with("nothing"))
      if (const auto near = nearest_name(parts.front(), names))
        reason += "; did you mean " + *near + "?";
    if (!reason.empty()) {
      sink.report(diagnose("setting-not-taken", {{"setting", setting}, {"reason", reason}}));
      good = false;
      continue;
    }
    text += line + "\n";
  }
  for (const std::string& wish : wishes) {
    const std::string line = wish_statement(wish);
    if (line.empty()) {
      sink.report(diagnose("setting-not-taken",
                           {{"setting", wish}, {"reason", "write it as: mast head-aft 20 mm"}}));
      good = false;
    }
    text += line + "\n";
  }
  if (!good)
    return nullptr;
  const SourceText& source = sources.add(SourceText(sources.next_id(), "command line", std::move(text)));
  return std::make_shared<const SyntaxTree>(parse(source, sink));
}

} // namespace sheerpole
