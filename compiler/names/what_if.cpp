#include "names/what_if.hpp"

#include "base/edit_distance.hpp"
#include "kinds/kind_row.hpp"
#include "names/point_setting.hpp"
#include "syntax/parse.hpp"

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
          if (const auto* point = std::get_if<Property>(&entry))
            result.push_back({point->name.text, Declared::Sort::point});
      } else if (!declaration->name.missing()) {
        result.push_back({declaration->name.text, Declared::Sort::declaration, declaration->kind.text});
      }
    }
  return result;
}

/// The declaration that says the same; empty when the path does not fit what its head is.
std::string statement(const Declared& head, const std::vector<std::string>& path, const std::string& value,
                      PointSettings& points) {
  switch (head.sort) {
  case Declared::Sort::let:
    return path.size() == 1 ? "let " + head.name + " = " + value : "";
  case Declared::Sort::point:
    return points.statements(path, value);
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
                                               SourceSet& sources, DiagnosticSink& sink,
                                               const std::string& as_of) {
  if (settings.empty() && wishes.empty())
    return nullptr;
  const std::vector<Declared> known = declared_in(trees);
  std::vector<std::string> names;
  for (const Declared& each : known)
    names.push_back(each.name);
  PointSettings points(trees, sources, as_of);
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
    else if ((line = statement(*head, parts, value, points)).empty())
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
