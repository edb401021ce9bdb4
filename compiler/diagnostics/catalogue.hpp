#pragma once

#include "diagnostics/severity.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One kind of finding: what it says and what `explain` prints of it. `{name}` in message and why is filled
/// in.
struct CatalogueEntry {
  std::string_view slug;
  Severity severity;
  std::string_view message; ///< what was seen, with the amounts
  std::string_view why;     ///< why it matters on the boat; may be empty
  std::string_view cause;   ///< explain page: how it comes about, in a rigger's words
  std::string_view example; ///< explain page: a piece of a rig file that provokes it
  std::string_view mend;    ///< explain page: what to do
};

/// One table for each thing that findings are about, each in a file of its own.
std::span<const CatalogueEntry> source_findings();
std::span<const CatalogueEntry> spelling_findings(); // numbers, texts, signs and names, word by word
std::span<const CatalogueEntry> syntax_findings();   // how the words stand together
std::span<const CatalogueEntry> file_findings();
std::span<const CatalogueEntry> name_findings();
std::span<const CatalogueEntry> value_findings();
std::span<const CatalogueEntry> structure_findings();
std::span<const CatalogueEntry> stack_findings();
std::span<const CatalogueEntry> path_findings();
std::span<const CatalogueEntry> rig_findings();
std::span<const CatalogueEntry> joint_findings();
std::span<const CatalogueEntry> securing_findings();
std::span<const CatalogueEntry> adjuster_findings();
std::span<const CatalogueEntry> splice_findings();
std::span<const CatalogueEntry> geometry_findings();
std::span<const CatalogueEntry> strength_findings();
std::span<const CatalogueEntry> evidence_findings();
std::span<const CatalogueEntry> overlay_findings();
std::span<const CatalogueEntry> record_findings();
std::span<const CatalogueEntry> outside_findings();

/// The findings about one subject.
struct FindingTable {
  std::string_view subject; ///< heading of the index: "Names"
  std::span<const CatalogueEntry> entries;
};

/// All tables, in the order of the phases.
std::vector<FindingTable> finding_tables();

/// All entries, table by table.
std::vector<const CatalogueEntry*> all_entries();

/// The entry of this slug, or nullptr.
const CatalogueEntry* find_entry(std::string_view slug);

} // namespace sheerpole
