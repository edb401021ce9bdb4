#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

std::array<std::span<const CatalogueEntry>, 10> all_tables() {
  return {source_findings(), spelling_findings(),  syntax_findings(), file_findings(), name_findings(),
          value_findings(),  structure_findings(), stack_findings(),  path_findings(), rig_findings()};
}

} // namespace

std::vector<const CatalogueEntry*> all_entries() {
  std::vector<const CatalogueEntry*> result;
  for (const auto table : all_tables())
    for (const CatalogueEntry& entry : table)
      result.push_back(&entry);
  return result;
}

const CatalogueEntry* find_entry(std::string_view slug) {
  for (const auto table : all_tables())
    for (const CatalogueEntry& entry : table)
      if (entry.slug == slug)
        return &entry;
  return nullptr;
}

} // namespace sheerpole
