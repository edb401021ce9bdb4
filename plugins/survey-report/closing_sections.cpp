#include "backend/sha256.hpp"
#include "plugins/survey-report/report_document.hpp"

namespace sheerpole {

void add_sources(const CheckedRig& checked, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Files", 2, "files"});
  DocumentTable table{.caption = "What this report was made from",
                      .columns = {{"file", 1.6}, {"lines", 0.5, true}, {"SHA-256", 3.6}},
                      .rows = {},
                      .notes = {"Whoever has a file can tell by its SHA-256 (FIPS 180-4) whether it is the "
                                "one that was used: sha256sum FILE."}};
  for (std::size_t i = 0; i < checked.sources().size(); ++i) {
    const SourceText& text = checked.sources()[SourceId{static_cast<std::uint32_t>(i)}];
    table.rows.push_back({text.name(), std::to_string(text.line_count()), sha256(text.file_bytes())});
  }
  document.blocks.emplace_back(std::move(table));
  const Table differences = differences_table(checked);
  if (differences.rows.empty())
    return;
  DocumentTable stated{.caption = differences.title, .columns = {}, .rows = differences.rows};
  for (const Column& column : differences.columns)
    stated.columns.push_back({column.heading, 1.0, column.right});
  document.blocks.emplace_back(std::move(stated));
}

void add_signatures(const CheckedRig&, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Sign-off", 2, "sign-off"});
  document.blocks.emplace_back(DocumentNotice{
      "Work aloft and on loaded rigging can kill. One stay at a time; hold the mast by something else "
      "meanwhile; look again at every pin before the boat sails. Local codes and a licensed professional "
      "come before this report."});
  document.blocks.emplace_back(
      DocumentText{"This report is for whoever it is addressed to and for nobody else. It speaks of the "
                   "day on which the "
                   "boat was looked at; it is no promise of what the rigging will stand."});
  document.blocks.emplace_back(DocumentToWrite{{"Looked at by, qualification:", "For:", "Place, day:",
                                                "Recommendations, in order:", "", "", "Signature:"}});
}

} // namespace sheerpole
