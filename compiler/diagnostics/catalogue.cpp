#include "diagnostics/catalogue.hpp"

namespace sheerpole {

std::vector<FindingTable> finding_tables() {
  return {
      {"The file itself", source_findings()},
      {"Numbers, texts, signs and names", spelling_findings()},
      {"How the words stand together", syntax_findings()},
      {"Files in use and the language line", file_findings()},
      {"What names stand for", name_findings()},
      {"Values and units", value_findings()},
      {"What belongs together", structure_findings()},
      {"Stacks", stack_findings()},
      {"Paths and readings", path_findings()},
      {"The rig", rig_findings()},
      {"Joints", joint_findings()},
      {"Articulation, securing, chafe", securing_findings()},
      {"Adjusters", adjuster_findings()},
      {"Splices and eyes", splice_findings()},
      {"Geometry of the rig", geometry_findings()},
      {"Strength, loads and materials", strength_findings()},
      {"Sources, dates and evidence", evidence_findings()},
      {"Spars, eyes, layers and sister ships", overlay_findings()},
      {"States, expectations, rules and waivers", record_findings()},
      {"Programs outside that make papers", outside_findings()},
  };
}

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
