#include "driver/finding_sections.hpp"

namespace sheerpole {

namespace {

std::string example_text(const FindingExample& example) {
  std::string text;
  for (const ExamplePart& part : example.parts)
    text += part.text;
  return text;
}

} // namespace

std::vector<FindingSection> finding_sections(const CatalogueEntry& entry) {
  std::vector<FindingSection> result{{"how it comes about", std::string(entry.cause)}};
  if (!entry.why.empty())
    result.push_back({"what it says of the boat", std::string(entry.why)});
  result.push_back({"for example", example_text(entry.example), true});
  result.push_back({"what to do", std::string(entry.mend)});
  return result;
}

} // namespace sheerpole
