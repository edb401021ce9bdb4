// Writes the tables of the catalogue from the files of the findings, while the compiler is built:
//   write_finding_tables FOLDER SUBJECT/SLUG.finding... > finding_tables.cpp
// A file that is not built as findings/README.md says ends it with exit code 1 and the place.
#include "source/file_reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <iterator>
#include <map>
#include <string>
#include <vector>

namespace sheerpole {

namespace {

/// One line of a file, for messages.
struct Place {
  std::string file;
  std::uint32_t line = 0;
};

[[noreturn]] void give_up(const Place& place, const std::string& fault) {
  std::fputs(fmt::format("{}:{}: {}\n", place.file, place.line, fault).c_str(), stderr);
  std::exit(1);
}

struct Part {
  std::string file;
  std::string text;
  std::string manner = "plain";
  std::uint32_t times = 1;
};

struct Finding {
  std::string slug;
  std::map<std::string, std::string> head; ///< "severity": "warning"
  std::vector<Part> example;
  std::string says;
  std::vector<Part> mended;
};

struct Subject {
  std::string folder;
  std::string heading;
  std::vector<Finding> findings;
};

SourceText read(const std::string& path) {
  DiskFileReader reader;
  auto text = load(path, SourceId{0}, reader);
  if (!text.ok())
    give_up({path, text.error().line}, "cannot be read, or is not UTF-8");
  return std::move(text.value());
}

constexpr std::string_view keys[] = {"severity", "message", "why",     "passes",        "not-checked",
                                     "cause",    "mend",    "command", "mended-command"};

constexpr std::string_view must_be_stated[] = {"severity", "message", "cause", "mend"};

/// What may stand behind the name of a file: "400 times in one line", "a program".
void read_manner(Part& part, std::string_view words, const Place& place) {
  constexpr std::pair<std::string_view, std::string_view> alone[] = {
      {"in an older encoding", "older_encoding"},
      {"a folder", "folder"},
      {"not readable", "not_readable"},
      {"a program", "program"}};
  for (const auto& [said, manner] : alone)
    if (words == said) {
      part.manner = manner;
      return;
    }
  const auto [end, error] = std::from_chars(words.data(), words.data() + words.size(), part.times);
  words.remove_prefix(static_cast<std::size_t>(end - words.data()));
  if (error != std::errc() || part.times < 2)
    give_up(place, "behind the comma stands how the part is written, for example `400 times in one line`");
  if (words == " times in one line")
    part.manner = "in_one_line";
  else if (words != " times")
    give_up(place, "behind the number stands `times` or `times in one line`");
}

/// "example boat.rig, 3 times": begins a part, and where its text goes.
std::string* begin_section(Finding& finding, std::string_view words, const Place& place) {
  if (words == "says")
    return &finding.says;
  const std::size_t blank = words.find(' ');
  const std::string_view which = words.substr(0, blank);
  if ((which != "example" && which != "mended") || blank == words.npos)
    give_up(place, "a section is `example FILE`, `says` or `mended FILE`");
  std::vector<Part>& parts = which == "example" ? finding.example : finding.mended;
  std::string_view name = words.substr(blank + 1);
  Part part;
  if (const std::size_t comma = name.find(", "); comma != name.npos) {
    read_manner(part, name.substr(comma + 2), place);
    name = name.substr(0, comma);
  }
  part.file = name;
  parts.push_back(std::move(part));
  return &parts.back().text;
}

/// A blank line between two sections is for the reader alone.
void drop_blank_end(std::string& text) {
  while (text.ends_with("\n\n"))
    text.pop_back();
}

Finding read_finding(const std::string& path, const std::string& slug) {
  const SourceText source = read(path);
  Finding finding{.slug = slug, .head = {}, .example = {}, .says = {}, .mended = {}};
  std::string* field = nullptr;
  bool in_head = true;
  for (std::uint32_t number = 1; number <= source.line_count(); ++number) {
    const std::string_view line = source.line(number);
    const Place place{path, number};
    if (line.starts_with("=== ")) {
      in_head = false;
      field = begin_section(finding, line.substr(4), place);
    } else if (!in_head) {
      if (number < source.line_count() || !line.empty())
        *field += std::string(line) + "\n";
    } else if (line.starts_with("  ")) {
      if (field == nullptr)
        give_up(place, "nothing is there that this line could go on from");
      *field += std::string(line.substr(1));
    } else if (!line.empty()) {
      const std::size_t colon = line.find(": ");
      const std::string_view key = line.substr(0, colon);
      if (colon == line.npos || std::find(std::begin(keys), std::end(keys), key) == std::end(keys))
        give_up(place,
                "a line of the head is `severity: `, `message: `, `why: `, `passes: `, `not-checked: `, "
                "`cause: `, `mend: `, `command: ` or `mended-command: `");
      if (finding.head.contains(std::string(key)))
        give_up(place, fmt::format("{} stands here twice", key));
      field = &(finding.head[std::string(key)] = line.substr(colon + 2));
    }
  }
  for (std::vector<Part>* parts : {&finding.example, &finding.mended})
    for (Part& part : *parts)
      drop_blank_end(part.text);
  drop_blank_end(finding.says);
  for (const std::string_view key : must_be_stated)
    if (!finding.head.contains(std::string(key)))
      give_up({path, 1}, fmt::format("{} is missing", key));
  const std::string& severity = finding.head["severity"];
  if (severity != "error" && severity != "warning" && severity != "note")
    give_up({path, 1}, "severity is error, warning or note");
  if (finding.example.empty() || finding.says.empty())
    give_up({path, 1}, "an example and what is said of it are missing");
  if (finding.mended.empty() && !finding.head.contains("mended-command"))
    give_up({path, 1}, "the mended example is missing");
  return finding;
}

/// "subject/slug.finding" taken apart.
struct FindingFile {
  std::string folder;
  std::string slug;
};

std::vector<FindingFile> finding_files(int count, char** arguments) {
  std::vector<FindingFile> files;
  for (int i = 0; i < count; ++i) {
    const std::string_view path = arguments[i];
    const std::size_t slash = path.find('/');
    if (slash == path.npos || !path.ends_with(".finding"))
      give_up({std::string(path), 1}, "is not SUBJECT/SLUG.finding");
    const std::string_view file = path.substr(slash + 1);
    files.push_back({std::string(path.substr(0, slash)), std::string(file.substr(0, file.rfind('.')))});
  }
  return files;
}

/// contents: `folder: heading`, and below it the slugs behind two blanks that have a place of their own;
/// the others of the folder follow.
std::vector<Subject> read_subjects(const std::string& folder, const std::vector<FindingFile>& files) {
  const SourceText contents = read(folder + "/contents");
  std::vector<Subject> result;
  for (std::uint32_t number = 1; number <= contents.line_count(); ++number) {
    const std::string_view line = contents.line(number);
    const Place place{contents.name(), number};
    if (line.empty())
      continue;
    if (line.starts_with("  ")) {
      if (result.empty())
        give_up(place, "no subject stands above");
      const std::string slug(line.substr(2));
      result.back().findings.push_back(
          read_finding(folder + "/" + result.back().folder + "/" + slug + ".finding", slug));
      continue;
    }
    const std::size_t colon = line.find(": ");
    if (colon == line.npos)
      give_up(place, "a subject is `folder: heading`");
    result.push_back({std::string(line.substr(0, colon)), std::string(line.substr(colon + 2)), {}});
  }
  for (const FindingFile& file : files) {
    const auto subject = std::find_if(result.begin(), result.end(),
                                      [&](const Subject& one) { return one.folder == file.folder; });
    if (subject == result.end())
      give_up({contents.name(), 1}, fmt::format("the folder {} has no heading here", file.folder));
    if (std::none_of(subject->findings.begin(), subject->findings.end(),
                     [&](const Finding& finding) { return finding.slug == file.slug; }))
      subject->findings.push_back(
          read_finding(folder + "/" + file.folder + "/" + file.slug + ".finding", file.slug));
  }
  return result;
}

std::string raw_text(std::string_view text) {
  return fmt::format("R\"~~~({})~~~\"", text);
}

std::string stated(const Finding& finding, const std::string& key, std::string_view otherwise = "") {
  const auto found = finding.head.find(key);
  return raw_text(found == finding.head.end() ? otherwise : std::string_view(found->second));
}

bool holds(const std::vector<Part>& parts, const std::string& file) {
  return std::any_of(parts.begin(), parts.end(), [&](const Part& part) { return part.file == file; });
}

/// The parts of the mended example, in the order of the example: what is not written there anew stays.
std::vector<Part> whole_mended(const Finding& finding) {
  std::vector<Part> result;
  for (const Part& part : finding.example) {
    if (!holds(finding.mended, part.file))
      result.push_back(part);
    else if (!holds(result, part.file))
      std::copy_if(finding.mended.begin(), finding.mended.end(), std::back_inserter(result),
                   [&](const Part& other) { return other.file == part.file; });
  }
  for (const Part& part : finding.mended)
    if (!holds(finding.example, part.file))
      result.push_back(part);
  return result;
}

std::string parts_text(const std::string& name, const std::vector<Part>& parts) {
  std::string text = fmt::format("constexpr std::array<ExamplePart, {}> {}{{{{\n", parts.size(), name);
  for (const Part& part : parts)
    text += fmt::format("  {{{}, {}, ExampleManner::{}, {}}},\n", raw_text(part.file), raw_text(part.text),
                        part.manner, part.times);
  return text + "}};\n";
}

std::string tables_text(const std::vector<Subject>& subjects) {
  std::string text = "// Written by the build from compiler/diagnostics/findings.\n"
                     "#include \"diagnostics/catalogue.hpp\"\n\n#include <array>\n\n"
                     "namespace sheerpole {\n\nnamespace {\n\n";
  std::string tables;
  std::size_t count = 0;
  for (std::size_t subject = 0; subject < subjects.size(); ++subject) {
    std::string entries;
    for (const Finding& finding : subjects[subject].findings) {
      const std::size_t id = count++;
      text += parts_text(fmt::format("example_{}", id), finding.example);
      text += parts_text(fmt::format("mended_{}", id), whole_mended(finding));
      const std::string command =
          finding.head.contains("command") ? finding.head.at("command") : "sheerpole check boat.rig";
      entries += fmt::format(
          "  {{{}, Severity::{}, {}, {}, {}, {}, {{{}, example_{}}}, {}, {{{}, mended_{}}}, {}, {}}},\n",
          raw_text(finding.slug), finding.head.at("severity"), stated(finding, "message"),
          stated(finding, "why"), stated(finding, "cause"), stated(finding, "mend"), raw_text(command), id,
          raw_text(finding.says), stated(finding, "mended-command", command), id, stated(finding, "passes"),
          stated(finding, "not-checked"));
    }
    text += fmt::format("constexpr std::array<CatalogueEntry, {}> subject_{}{{{{\n{}}}}};\n",
                        subjects[subject].findings.size(), subject, entries);
    tables += fmt::format("  {{{}, subject_{}}},\n", raw_text(subjects[subject].heading), subject);
  }
  return text +
         fmt::format("constexpr std::array<FindingTable, {}> tables{{{{\n{}}}}};\n\n}} // namespace\n\n"
                     "std::span<const FindingTable> finding_tables() {{\n  return tables;\n}}\n\n"
                     "}} // namespace sheerpole\n",
                     subjects.size(), tables);
}

} // namespace

} // namespace sheerpole

int main(int argument_count, char** arguments) {
  using namespace sheerpole;
  if (argument_count < 3) {
    std::fputs("write_finding_tables FOLDER FILE... writes the tables of the findings to its output\n",
               stderr);
    return 2;
  }
  const std::string folder = arguments[1];
  const std::string text =
      tables_text(read_subjects(folder, finding_files(argument_count - 2, arguments + 2)));
  std::fwrite(text.data(), 1, text.size(), stdout);
  return 0;
}
