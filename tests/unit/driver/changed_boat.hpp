#pragma once

#include "kinds/kind_row.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <fstream>
#include <optional>
#include <regex>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// A boat as text, in which one thing after another is stated otherwise.
namespace sheerpole::changed_boat {

inline bool is_word(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '_';
}

/// Walks a text and tells what is neither in quotes nor in a comment.
class Reader {
public:
  explicit Reader(const std::string& text) : text_(text) {}
  /// Whether the character at `i` counts; to be asked of each in turn.
  bool counts(std::size_t i) {
    if (text_[i] == '\n')
      comment_ = false;
    if (comment_)
      return false;
    if (text_[i] == '"')
      quoted_ = !quoted_;
    else if (text_[i] == '#' && !quoted_)
      comment_ = true;
    return !quoted_ && !comment_ && text_[i] != '"';
  }

private:
  const std::string& text_;
  bool quoted_ = false;
  bool comment_ = false;
};

/// Whether a text holds a name as a word of its own.
inline bool mentions(const std::string& text, const std::string& name) {
  for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name, at + 1))
    if ((at == 0 || !is_word(text[at - 1])) &&
        (at + name.size() == text.size() || !is_word(text[at + name.size()])))
      return true;
  return false;
}

/// One declaration of a boat, or one line outside of all.
struct Chunk {
  std::string kind;
  std::string name; ///< may be empty
  std::string text;
  bool can_be_left_out = false; ///< when nothing that is left speaks of it
};

using BoatText = std::vector<Chunk>;

inline std::string next_word(const std::string& text, std::size_t& at) {
  while (at < text.size() && text[at] == ' ')
    ++at;
  const std::size_t begin = at;
  while (at < text.size() && is_word(text[at]))
    ++at;
  return text.substr(begin, at - begin);
}

/// Whether declarations of a kind can be left out when nothing that is left speaks of them.
inline bool kind_can_be_left_out(const std::string& word) {
  const KindRow* kind = find_kind(word);
  if (kind == nullptr)
    return false;
  switch (kind->category) {
  case Category::material:
  case Category::splice:
  case Category::part:
  case Category::tape:
  case Category::stay:
    return true;
  default:
    return false;
  }
}

inline BoatText read_boat(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  BoatText boat;
  std::string line;
  int depth = 0;
  while (std::getline(in, line)) {
    if (depth == 0) {
      std::size_t at = 0;
      const std::string kind = next_word(line, at);
      const std::string name = next_word(line, at);
      boat.push_back({kind, name == "of" ? "" : name, "", kind_can_be_left_out(kind)});
    }
    boat.back().text += line + "\n";
    Reader reader(line);
    for (std::size_t i = 0; i < line.size(); ++i)
      if (reader.counts(i))
        depth += line[i] == '{' ? 1 : line[i] == '}' ? -1 : 0;
  }
  return boat;
}

inline std::string text_of(const BoatText& boat) {
  std::string text;
  for (const Chunk& chunk : boat)
    text += chunk.text;
  return text;
}

/// The declaration, the stays that have to do with it, or else one stay, and what they use; nothing that
/// speaks of anything else. `most`: how many stays.
inline BoatText only_with(const BoatText& boat, std::size_t kept, std::size_t most) {
  std::vector<bool> needed(boat.size(), false);
  needed[kept] = true;
  const auto speaks_of = [&](std::size_t a, std::size_t b) {
    return !boat[b].name.empty() && mentions(boat[a].text, boat[b].name);
  };
  std::size_t stays = boat[kept].kind == "stay" ? 1 : 0;
  for (std::size_t i = 0; i < boat.size() && stays < most; ++i)
    if (boat[i].kind == "stay" && i != kept && (speaks_of(i, kept) || speaks_of(kept, i))) {
      needed[i] = true;
      ++stays;
    }
  const auto uses_the_same = [&](std::size_t i) {
    for (std::size_t j = 0; j < boat.size(); ++j)
      if (boat[j].can_be_left_out && boat[j].kind != "stay" && speaks_of(kept, j) && speaks_of(i, j))
        return true;
    return false;
  };
  for (const bool any : {false, true})
    for (std::size_t i = 0; i < boat.size() && stays == 0; ++i)
      if (boat[i].kind == "stay" && (any || uses_the_same(i))) {
        needed[i] = true;
        ++stays;
      }
  for (bool more = true; more;) {
    more = false;
    for (std::size_t i = 0; i < boat.size(); ++i)
      for (std::size_t j = 0; needed[i] && j < boat.size(); ++j)
        if (!needed[j] && boat[j].kind != "stay" && boat[j].can_be_left_out && speaks_of(i, j))
          more = needed[j] = true;
  }
  BoatText result;
  for (std::size_t i = 0; i < boat.size(); ++i) {
    bool stays_in = needed[i];
    if (!stays_in && !boat[i].can_be_left_out) {
      stays_in = true;
      for (std::size_t j = 0; stays_in && j < boat.size(); ++j)
        stays_in = (needed[j] || !boat[j].can_be_left_out || !speaks_of(i, j));
    }
    if (stays_in)
      result.push_back(boat[i]);
  }
  return result;
}

/// Where a row may be stated: between two braces or two brackets of a declaration.
struct Place {
  std::size_t chunk = 0;
  std::size_t begin = 0; ///< behind what opens
  std::size_t end = 0;   ///< what closes
  bool brackets = false;
  bool opened = true; ///< else the brackets have to be written
};

/// Where what is opened before `at` is closed.
inline std::size_t closed_at(const std::string& text, std::size_t at, char opens, char closes) {
  Reader reader(text);
  int depth = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool counts = reader.counts(i);
    if (i < at || !counts)
      continue;
    depth += text[i] == opens ? 1 : text[i] == closes ? -1 : 0;
    if (depth < 0)
      return i;
  }
  return text.size();
}

/// The blocks of a kind, also those inside others.
inline std::vector<Place> blocks_of(const BoatText& boat, std::string_view kind) {
  std::vector<Place> places;
  for (std::size_t number = 0; number < boat.size(); ++number) {
    const std::string& text = boat[number].text;
    Reader reader(text);
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (!reader.counts(i) || (i > 0 && text[i - 1] != ' ' && text[i - 1] != '\n') ||
          text.compare(i, kind.size(), kind) != 0 || is_word(text[i + kind.size()]))
        continue;
      const std::size_t brace = text.find('{', i);
      if (brace == std::string::npos || brace > text.find('\n', i) ||
          text.substr(i, std::min(brace, text.find('"', i)) - i).find_first_of(":,(") != std::string::npos)
        continue;
      places.push_back({number, brace + 1, closed_at(text, brace + 1, '{', '}')});
    }
  }
  return places;
}

/// Where a word stands in a stack or as an end: `screw-12 (open: 50 %)`, `jaw (gap: 12 mm)`, `line`.
inline std::vector<Place> items_of(const BoatText& boat, const std::string& word, bool in_stacks) {
  std::vector<Place> places;
  for (std::size_t number = 0; number < boat.size(); ++number) {
    const std::string& text = boat[number].text;
    if (in_stacks && boat[number].kind != "stay" && boat[number].kind != "state")
      continue;
    Reader reader(text);
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (!reader.counts(i) || text.compare(i, word.size(), word) != 0 || (i > 0 && is_word(text[i - 1])) ||
          is_word(text[i + word.size()]))
        continue;
      const std::size_t behind = i + word.size();
      if (text.compare(behind, 2, " (") == 0)
        places.push_back({number, behind + 2, closed_at(text, behind + 2, '(', ')'), true});
      else if (in_stacks && text[behind] == '\n')
        places.push_back({number, behind, behind, true, false});
    }
  }
  return places;
}

/// Where the value of a row stands in a place: from behind its colon.
inline std::optional<std::pair<std::size_t, std::size_t>>
value_in(const std::string& text, const Place& place, std::string_view name) {
  Reader reader(text);
  int depth = 0;
  for (std::size_t i = 0; i < place.end; ++i) {
    const bool counts = reader.counts(i);
    if (i < place.begin || !counts)
      continue;
    depth += text[i] == '{' || text[i] == '(' ? 1 : text[i] == '}' || text[i] == ')' ? -1 : 0;
    if (depth != 0 || is_word(text[i - 1]) || text.compare(i, name.size(), name) != 0 ||
        text[i + name.size()] != ':')
      continue;
    const std::size_t begin = i + name.size() + 1;
    std::size_t end = begin;
    bool quoted = false;
    for (int inner = 0; end < place.end; ++end) {
      quoted = quoted != (text[end] == '"');
      if (quoted)
        continue;
      inner += text[end] == '(' ? 1 : text[end] == ')' ? -1 : 0;
      if (text[end] == '\n' || text[end] == '#' || (place.brackets && inner == 0 && text[end] == ','))
        break;
    }
    return std::pair(begin, end);
  }
  return std::nullopt;
}

/// The boat with a row stated so.
inline BoatText with(const BoatText& boat, const Place& place, std::string_view name,
                     const std::string& value) {
  BoatText result = boat;
  std::string& text = result[place.chunk].text;
  const std::string stated = std::string(name) + ": " + value;
  if (const auto found = value_in(text, place, name))
    text.replace(found->first, found->second - found->first, " " + value);
  else if (!place.opened)
    text.insert(place.begin, " (" + stated + ")");
  else if (place.brackets)
    text.insert(place.begin, stated + (place.begin == place.end ? "" : ", "));
  else
    text.insert(place.begin, "\n  " + stated + "\n");
  return result;
}

/// The boat with a row not stated there.
inline BoatText without(const BoatText& boat, const Place& place, std::string_view name) {
  BoatText result = boat;
  std::string& text = result[place.chunk].text;
  if (const auto found = value_in(text, place, name))
    text.erase(found->first - name.size() - 1, found->second - found->first + name.size() + 1);
  return result;
}

inline std::string trimmed(std::string text) {
  while (!text.empty() && text.back() == ' ')
    text.pop_back();
  const std::size_t begin = text.find_first_not_of(' ');
  return begin == std::string::npos ? "" : text.substr(begin);
}

inline std::string number_text(double value) {
  std::ostringstream out;
  out.precision(6);
  out << std::defaultfloat << value;
  return out.str();
}

/// The first number of a text, some steps on; `whole`: a whole number.
inline std::optional<std::string> number_moved(const std::string& value, double factor,
                                               bool whole = false) {
  static const std::regex number(R"((^|[\s(])(-?[0-9][0-9_]*(\.[0-9]+)?))");
  std::smatch match;
  if (!std::regex_search(value, match, number))
    return std::nullopt;
  std::string digits = match[2];
  std::erase(digits, '_');
  const double old = std::stod(digits);
  double moved = old == 0.0 ? factor - 1.0 : old * factor;
  if (whole)
    moved = std::max(1.0, std::floor(moved));
  return match.prefix().str() + match[1].str() + number_text(moved) + match.suffix().str();
}

inline std::vector<std::string> names_of(const BoatText& boat, Category category) {
  std::vector<std::string> result;
  for (const Chunk& chunk : boat) {
    const KindRow* kind = find_kind(chunk.kind);
    if (kind != nullptr && kind->category == category && !chunk.name.empty())
      result.push_back(chunk.name);
    if (kind == nullptr || kind->category != Category::points || category != Category::point)
      continue;
    static const std::regex name(R"(\n\s*([a-z][a-z0-9-]*)( "[^"]*")?:)");
    for (std::sregex_iterator at(chunk.text.begin(), chunk.text.end(), name), end; at != end; ++at)
      result.push_back((*at)[1].str());
  }
  return result;
}

/// Other values for a row, from the nearest step outwards.
inline std::vector<std::string> other_values(const BoatText& boat, const PropertyRow& row,
                                             const std::string& value) {
  std::vector<std::string> result;
  const auto add = [&](const std::optional<std::string>& one) {
    if (one && *one != value)
      result.push_back(*one);
  };
  switch (row.type) {
  case ValueType::quantity:
  case ValueType::quantity_list:
  case ValueType::vector:
  case ValueType::any:
    for (const double factor : {1.05, 0.9, 1.004, 0.996, 1.5, 0.5, 4.0, 0.1, 20.0})
      add(number_moved(value, factor));
    break;
  case ValueType::number:
  case ValueType::count:
    for (const double factor : {2.0, 1.5, 0.5})
      add(number_moved(value, factor, row.type == ValueType::count));
    break;
  case ValueType::text:
  case ValueType::text_list:
  case ValueType::word:
    for (const char* other : {"terminal", "rod", "\"other words\"", "\"none\"", "\"1x19\"",
                              "\"3-strand polyester\"", "toggle", "wire", "secured"})
      if (row.type == ValueType::word || other[0] == '"')
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
    for (const std::string& name : names_of(boat, row.refers_to))
      add(name);
    break;
  case ValueType::path:
    for (const auto& [from, to] : {std::pair("clamped", "free"), std::pair("free", "clamped")})
      if (value.find(from) != std::string::npos)
        add(std::regex_replace(value, std::regex(from), to));
    break;
  case ValueType::end:
    add(number_moved(value, 2.0));
    add(number_moved(value, 3.0));
    add(number_moved(value, 1.3));
    break;
  }
  return result;
}

} // namespace sheerpole::changed_boat
