#pragma once

#include "diagnostics/severity.hpp"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace sheerpole {

/// How a part of an example is written into its file.
enum class ExampleManner : std::uint8_t {
  plain,          ///< as it stands
  in_one_line,    ///< repeated without line ends between
  older_encoding, ///< one byte for each sign, ISO 8859-1, which is no UTF-8
  folder,         ///< no file but a folder of this name
  not_readable,   ///< a file that is there and that no one can read
  program,        ///< a file that can be started
};

/// A part of a file of an example; several of one name are written one behind the other.
///
/// What is written more than once counts: `{n}` in the text is 1, 2, 3 and `{n + 1}` the next. When it
/// stands in the name, each goes into a file of its own.
struct ExamplePart {
  std::string_view file; ///< "boat.rig"
  std::string_view text;
  ExampleManner manner = ExampleManner::plain;
  std::uint32_t times = 1;
};

/// Whole files and a command that can be tried as they are.
struct FindingExample {
  std::string_view command; ///< "sheerpole check boat.rig"
  std::span<const ExamplePart> parts;
};

/// One kind of finding: what it says and what `explain` prints of it. `{name}` in the texts that a command
/// says is filled in. Each stands in a file of its own, findings/<subject>/<slug>.finding; see
/// findings/README.md.
struct CatalogueEntry {
  std::string_view slug;
  Severity severity;
  std::string_view message;     ///< what was seen, with the amounts
  std::string_view why;         ///< why it matters on the boat; may be empty
  std::string_view cause;       ///< explain page: how it comes about, in a rigger's words
  std::string_view mend;        ///< explain page: what to do
  FindingExample example;       ///< explain page: files and a command that provoke it
  std::string_view says;        ///< all that the command says of the example, but for the sums at the end
  FindingExample mended;        ///< the example after doing what `mend` says; it has the finding no more
  std::string_view passes = {}; ///< of a check: with what it passes; may be empty
  std::string_view not_checked = {}; ///< of a check: why it could not look; may be empty
};

/// The findings about one subject.
struct FindingTable {
  std::string_view subject; ///< heading of the index: "Names"
  std::span<const CatalogueEntry> entries;
};

/// All tables, in the order of the phases. The build writes them from the files in findings/.
std::span<const FindingTable> finding_tables();

/// All entries, table by table.
std::vector<const CatalogueEntry*> all_entries();

/// The entry of this slug, or nullptr.
const CatalogueEntry* find_entry(std::string_view slug);

} // namespace sheerpole
