#include "service/begin/starts.hpp"

#include "base/internal_error.hpp"

#include <algorithm>
#include <set>

namespace sheerpole {

namespace {

std::string_view text_of(std::string_view name) {
  for (const StartText& one : start_texts())
    if (one.name == name)
      return one.text;
  internal_error("no start text " + std::string(name));
}

std::vector<std::string> text_lines(std::string_view text) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

/// "a; b" as its parts, blanks round them taken off.
std::vector<std::string> parted(std::string_view text, char by) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(by), text.size());
    std::string_view part = text.substr(0, end);
    while (part.starts_with(' '))
      part.remove_prefix(1);
    while (part.ends_with(' '))
      part.remove_suffix(1);
    parts.emplace_back(part);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return parts;
}

struct Section {
  std::string name;
  std::vector<std::string> lines;
};

/// The sections of a file, each behind a line `=== name`. What stands before the first one is for whoever
/// reads the file.
std::vector<Section> sections_of(std::string_view file) {
  std::vector<Section> sections;
  for (std::string& line : text_lines(text_of(file)))
    if (line.starts_with("=== "))
      sections.push_back({line.substr(4), {}});
    else if (!sections.empty())
      sections.back().lines.push_back(std::move(line));
  return sections;
}

const Section& section(const std::vector<Section>& sections, std::string_view name) {
  for (const Section& one : sections)
    if (one.name == name)
      return one;
  internal_error("no section " + std::string(name) + " in a start text");
}

std::string joined_lines(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines)
    text += line + "\n";
  return text;
}

/// The value of a key of the head, its lines joined.
void set_head(RigStart& start, const std::string& key, const std::string& value,
              std::vector<std::string>& with) {
  if (key == "title")
    start.title = value;
  else if (key == "about")
    start.about = value;
  else if (key == "measure")
    start.measure_first = value;
  else if (key == "second-mast")
    start.second_mast = value;
  else if (key == "asks")
    start.asks = parted(value, ',');
  else if (key == "with")
    with = parted(value, ',');
  else if (key == "example")
    for (const std::string& one : parted(value, ','))
      start.example[one.substr(0, one.find(' '))] = one.substr(one.find(' ') + 1);
  else
    internal_error("no key " + key + " in the start of " + start.name);
}

RigStart read_rig(const StartText& file) {
  RigStart start;
  start.name = file.name.substr(file.name.find('/') + 1);
  std::vector<std::pair<std::string, std::string>> head;
  std::vector<std::string> blocks, with;
  std::vector<std::string>* into = nullptr; // in the head
  std::vector<std::string> of_rope;
  for (std::string& line : text_lines(file.text))
    if (line == "===" || line == "=== rope")
      into = line == "===" ? &blocks : &of_rope;
    else if (into != nullptr)
      into->push_back(std::move(line));
    else if (line.starts_with("  ") && !head.empty())
      head.back().second += line.substr(1);
    else if (const std::size_t colon = line.find(": "); colon != std::string::npos)
      head.emplace_back(line.substr(0, colon), line.substr(colon + 2));
  for (const auto& [key, value] : head)
    set_head(start, key, value, with);
  static const std::vector<Section> pieces = sections_of("pieces");
  for (const std::string& piece : with)
    start.blocks += joined_lines(section(pieces, piece).lines) + "\n";
  start.blocks += joined_lines(blocks);
  start.rope_blocks = joined_lines(of_rope);
  return start;
}

/// The items of one end in wire or in rope.
std::vector<std::string> end_items(const Section& place, std::string_view end, FirstLine line) {
  const std::string_view key = line == FirstLine::wire ? "  wire: " : "  rope: ";
  bool here = false;
  for (const std::string& one : place.lines)
    if (!one.starts_with(' '))
      here = one == end;
    else if (here && one.starts_with(key))
      return parted(one.substr(key.size()), ';');
  internal_error("no end " + std::string(end) + " of stays " + place.name);
}

/// Whether the name stands in the text as a word of its own.
bool names(std::string_view text, std::string_view name) {
  const auto part_of_name = [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; };
  for (std::size_t at = text.find(name); at != std::string_view::npos; at = text.find(name, at + 1)) {
    const std::size_t end = at + name.size();
    if ((at == 0 || !part_of_name(text[at - 1])) && (end == text.size() || !part_of_name(text[end])))
      return true;
  }
  return false;
}

} // namespace

std::vector<std::string> rig_start_names() {
  constexpr std::string_view folder = "rigs/";
  std::vector<std::string> names;
  for (const StartText& file : start_texts())
    if (file.name.starts_with(folder))
      names.emplace_back(file.name.substr(folder.size()));
  return names;
}

const std::vector<RigStart>& rig_starts() {
  static const std::vector<RigStart> all = [] {
    std::vector<RigStart> rigs;
    for (const StartText& file : start_texts())
      if (file.name.starts_with("rigs/"))
        rigs.push_back(read_rig(file));
    return rigs;
  }();
  return all;
}

const RigStart& rig_start(std::string_view name) {
  for (const RigStart& one : rig_starts())
    if (one.name == name)
      return one;
  internal_error("no start of a rig " + std::string(name));
}

std::vector<std::string> stack_of(std::string_view made, FirstLine line) {
  static const std::vector<Section> ends = sections_of("ends");
  const std::vector<std::string> names = parted(made, ',');
  if (names.size() != 3)
    internal_error("a stay is made of three ends: " + std::string(made));
  std::vector<std::string> stack = end_items(section(ends, "aloft"), names[0], line);
  stack.emplace_back("line");
  for (const auto& [place, name] : {std::pair("take-up", names[1]), std::pair("below", names[2])})
    for (std::string& item : end_items(section(ends, place), name, line))
      stack.push_back(std::move(item));
  return stack;
}

std::string hardware_of(const std::vector<std::string>& items, FirstLine line) {
  static const std::vector<Section> sections = sections_of("hardware");
  const std::string other_line = line == FirstLine::wire ? ", rope" : ", wire";
  std::vector<const Section*> of_line;
  for (const Section& part : sections)
    if (const std::string with_line = part.name + (line == FirstLine::wire ? ", wire" : ", rope");
        !part.name.ends_with(other_line) &&
        std::none_of(sections.begin(), sections.end(),
                     [&](const Section& other) { return other.name == with_line; }))
      of_line.push_back(&part);
  const auto name_of = [](const Section& part) { return part.name.substr(0, part.name.find(',')); };
  std::string text = joined_lines(items), parts;
  std::set<const Section*> used;
  for (std::size_t before = used.size() + 1; before != used.size();) { // until nothing new is named
    before = used.size();
    for (const Section* part : of_line)
      if (used.count(part) == 0 && names(text, name_of(*part))) {
        used.insert(part);
        text += joined_lines(part->lines);
      }
  }
  for (const Section* part : of_line)
    if (used.count(part) > 0)
      parts += joined_lines(part->lines);
  while (parts.ends_with("\n\n"))
    parts.pop_back();
  return parts;
}

std::vector<std::string> way_words(std::string_view way, std::string_view part) {
  static const std::vector<Section> ways = sections_of("ways");
  std::vector<std::string> words;
  bool here = false;
  for (const std::string& line : section(ways, way).lines)
    if (line == "todo" || line == "page")
      here = line == part;
    else if (here && line.starts_with("- "))
      words.push_back(line.substr(2));
    else if (here && !line.empty() && !words.empty())
      words.back() += " " + line.substr(line.find_first_not_of(' '));
  return words;
}

} // namespace sheerpole
