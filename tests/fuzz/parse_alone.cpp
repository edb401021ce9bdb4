// The target `parse` for a program that holds nothing else: it is compiled in a tenth of the time, and its
// inputs are made of the examples of the findings.

#include "diagnostics/catalogue.hpp"
#include "fuzz/targets.hpp"

namespace sheerpole::fuzz {

namespace {

std::vector<std::string> example_texts() {
  std::vector<std::string> texts;
  for (const CatalogueEntry* entry : all_entries())
    for (const FindingExample* example : {&entry->example, &entry->mended})
      for (const ExamplePart& part : example->parts)
        if (part.manner == ExampleManner::plain && part.file.ends_with(".rig"))
          texts.emplace_back(part.text);
  return texts;
}

} // namespace

const std::vector<Target>& targets() {
  static const std::vector<Target> alone{
      {"parse",
       try_parse,
       ".rig",
       {"tests/fuzz/corpus/rig", "tests/golden/inputs"},
       {{"{",      "}",     "(",    ")",      ":",     ",",       ">",      "=",           "±",
         "x",      "from",  "#",    "\"",     "-1 mm", "1e308 m", "7/0 in", "38' 7 3/8\"", "100 %",
         "stay a", "stack", "line", "points", "use",   "let a",   "expect", "language 1"},
        example_texts(),
        nullptr}}};
  return alone;
}

} // namespace sheerpole::fuzz
