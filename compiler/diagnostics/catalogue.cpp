#include "diagnostics/catalogue.hpp"

namespace sheerpole {

std::vector<const CatalogueEntry*> all_entries() {
  std::vector<const CatalogueEntry*> result;
  for (const FindingTable& table : finding_tables())
    for (const CatalogueEntry& entry : table.entries)
      result.push_back(&entry);
  return result;
}

const CatalogueEntry* find_entry(std::string_view slug) {
  for (const FindingTable& table : finding_tables())
    for (const CatalogueEntry& entry : table.entries)
      if (entry.slug == slug)
        return &entry;
  return nullptr;
}

} // namespace sheerpole
