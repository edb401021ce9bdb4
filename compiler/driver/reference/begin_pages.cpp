#include "driver/begin/lengths_rig.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/reference/pages.hpp"
#include "service/begin/first_rig.hpp"
#include "service/compile.hpp"

#include "base/code_point.hpp"
#include "base/internal_error.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t wrapped_at = 140;

std::string wrapped(std::string_view text) {
  std::string result;
  for (const std::string& line : wrap_text(text, wrapped_at))
    result += line + "\n";
  return result + "\n";
}

/// A first file of the rig with the numbers of its example.
FirstNumbers example_of(const RigStart& start) {
  FirstNumbers first;
  first.boat = start.title;
  first.rig = start.name;
  first.numbers.insert(start.example.begin(), start.example.end());
  return first;
}

Compilation compiled(const FirstNumbers& first) {
  const std::string text = first_rig(first);
  OneTextReader reader("boat.rig", text);
  Compilation made = compile("boat.rig", reader, {});
  if (!made.checked)
    internal_error("the first file of a " + first.rig + " has an error");
  return made;
}

std::string picture(const CheckedRig& rig) {
  for (OutputFile& file : built_in_backend("diagram")->generate({.checked = rig, .name = "boat.rig"}).files)
    if (file.name == "rig-diagram.svg")
      return std::move(file.bytes);
  internal_error("the diagram has no view of the rig");
}

std::string command(const RigStart& start) {
  std::string text = "sheerpole begin my-boat.rig --rig " + start.name;
  for (const std::string& asked : start.asks)
    text += fmt::format(" --{} \"{}\"", asked, start.example.at(asked));
  return text;
}

/// The stays by their titles, those of both sides once.
std::string stays_table(const Rig& rig) {
  std::string text = markdown_heading_row({"stay", "what it is", "runs through"});
  std::vector<std::string> seen;
  for (const Stay& stay : rig.stays) {
    if (std::find(seen.begin(), seen.end(), stay.base) != seen.end())
      continue;
    seen.push_back(stay.base);
    std::string path;
    for (const PathStop& stop : stay.path)
      path += (path.empty() ? "" : " > ") + rig[stop.point].base;
    text +=
        markdown_row({markdown_code(stay.base),
                      markdown_text(stay.title) + (stay.side == Side::centre ? "" : ", port and starboard"),
                      markdown_code(path)});
  }
  return text + "\n";
}

std::string way_section(std::string_view heading, std::string_view way) {
  std::string text = fmt::format("**{}**: ", heading);
  for (const std::string& words : way_words(way, "page"))
    text += words;
  return wrapped(text);
}

std::string rig_page(const RigStart& start, const Rig& rig) {
  std::string text = fmt::format("# {}\n\n", start.title);
  text += wrapped(start.about);
  text += fmt::format("![Side, front and deck views of this first file]({}.svg)\n\n", start.name);
  text += fmt::format("```sh\n{}\n```\n\n", command(start));
  if (rig.stays.empty())
    return text + wrapped("Measure first " + start.measure_first);
  text += wrapped("With `--line rope` her stays are of rope, else of wire; the picture is the same. The "
                  "numbers above are those of the picture.");
  text += stays_table(rig);
  text += wrapped("Measure first " + start.measure_first);
  text += way_section("With a cord, `--measured-by cord`", "cord");
  text += way_section("With a tape, `--measured-by tape`", "tape");
  text += way_section("From a drawing, `--measured-by drawing`", "drawing");
  while (text.ends_with("\n\n"))
    text.pop_back();
  return text;
}

std::string contents_page() {
  std::string text = "# First files\n\n";
  text += wrapped(
      "`sheerpole begin` writes a first rig file for one of the rigs below, from the few numbers that "
      "it asks for. Whatever else it takes to have a whole file is `assumed`, with what to measure "
      "in its place, so every cut is a DRAFT until somebody has been on the boat. The head of "
      "the file says what to do, one line after the other.");
  text += markdown_heading_row({"rig", "`--rig`", "asks for"});
  for (const RigStart& start : rig_starts()) {
    std::string asks;
    for (const std::string& asked : start.asks)
      asks += (asks.empty() ? "" : " ") + std::string("`--") + asked + "`";
    text += markdown_row(
        {fmt::format("[{}]({}.md)", start.title, start.name), markdown_code(start.name), asks});
  }
  text += "\n" + markdown_heading_row({"option", "what it is"});
  for (const AskedNumber& asked : asked_numbers())
    text += markdown_row({markdown_code("--" + std::string(asked.name)), markdown_text(asked.help)});
  text += markdown_row({"`--line`", "`wire` or `rope`; wire unless said"});
  text += markdown_row({"`--measured-by`", "`cord`, `tape` or `drawing`; drawing unless said"});
  text += markdown_row({"`--boat`", "her name"});
  text += markdown_row({"`--print`", "shows the file and writes nothing"});
  text += "\n" + wrapped("A number that the rig does not ask for is refused, so that none is lost.");
  text += "## From a table of lengths\n\n";
  text += wrapped(
      "`sheerpole begin my-boat.rig --lengths lengths.csv` makes a file of a table, of wire or, with "
      "`--line rope`, of rope. Its first row holds the headings, in any order; `stay` is "
      "needed, and `length`, `cord` or `mark`. The table is CSV (RFC 4180); semicolons may part its "
      "cells.");
  text += markdown_heading_row({"heading", "what stands below it"});
  for (const LengthsColumn& column : lengths_columns())
    text += markdown_row({markdown_code(column.heading), markdown_text(column.help)});
  text +=
      "\n" +
      wrapped("Each value stays as it was written, with its unit. A row that says how it was read, "
              "by whom or when becomes a reading of its stay; else its length is stated as `pin-to-pin`. "
              "A cell or a column that cannot be kept is refused with its line and place, and "
              "nothing is written.");
  text += "```\nstay;side;length;cord;knots;offset;date\nForestay;;11_815 mm;;;;2026-05-02\n"
          "Cap shroud;port;X;orange;4;40 mm;2026-05-02\nCap shroud;starboard;X;orange;5;40 "
          "mm;2026-05-02\n```\n";
  return text;
}

} // namespace

std::vector<OutputFile> begin_pages() {
  std::vector<OutputFile> pages{{"README.md", contents_page()}};
  for (const RigStart& start : rig_starts()) {
    const Compilation made = compiled(example_of(start));
    pages.push_back({start.name + ".md", rig_page(start, made.checked->rig())});
    pages.push_back({start.name + ".svg", picture(*made.checked)});
  }
  return pages;
}

} // namespace sheerpole
