#include "diagnostics/catalogue.hpp"

namespace sheerpole {

std::vector<const CatalogueEntry*> all_entries() {
  std::vector<const CatalogueEntry*> result;
  for (const auto table :
       {source_findings(), syntax_findings(), name_findings(), value_findings(), rig_findings()})
    for (const CatalogueEntry& entry : table)
      result.push_back(&entry);
  return result;
}

const CatalogueEntry* find_entry(std::string_view slug) {
  for (const auto table :
       {source_findings(), syntax_findings(), name_findings(), value_findings(), rig_findings()})
    for (const CatalogueEntry& entry : table)
      if (entry.slug == slug)
        return &entry;
  return nullptr;
}

} // namespace sheerpole
