#include "driver/finding_sections.hpp"

namespace sheerpole {

std::vector<FindingSection> finding_sections(const CatalogueEntry& entry) {
  std::vector<FindingSection> result{{"how it comes about", entry.cause, false}};
  if (!entry.why.empty())
    result.push_back({"what it says of the boat", entry.why, false});
  result.push_back({"for example", entry.example, true});
  result.push_back({"what to do", entry.mend, false});
  return result;
}

} // namespace sheerpole
