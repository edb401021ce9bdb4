#include "backend/table/rig_tables.hpp"
#include "diagnostics/catalogue.hpp"
#include "diagnostics/render.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/exit_code.hpp"
#include "driver/reference/completion.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "kinds/kind_row.hpp"
#include "units/format_length.hpp"
#include "units/thread.hpp"
#include "units/unit.hpp"

namespace sheerpole {

namespace {

Table two_columns(std::string first, std::string second) {
  Table table;
  table.columns = {{std::move(first), false}, {std::move(second), false}};
  return table;
}

Table kinds_table() {
  Table table = two_columns("kind", "what it says");
  for (const KindRow& kind : all_kinds())
    table.rows.push_back({std::string(kind.name), std::string(kind.help)});
  table.notes = {"`sheerpole explain turnbuckle` shows what a kind may state."};
  return table;
}

Table ends_table() {
  Table table = two_columns("end", "what it is");
  for (const EndRow& end : all_ends())
    table.rows.push_back({std::string(end.name), std::string(end.help)});
  return table;
}

Table units_table() {
  Table table = two_columns("unit", "meaning");
  table.columns.push_back({"factor from", false});
  for (const Unit& unit : all_units())
    table.rows.push_back({std::string(unit.name), std::string(unit.meaning), std::string(unit.source)});
  table.notes = {"Lengths may also be written 38' 7 3/8\", 7-3/8 in, 11_642 mm, 0.5 m."};
  return table;
}

Table threads_table() {
  Table table = two_columns("thread", "standard");
  table.columns.insert(table.columns.begin() + 1, {{"diameter mm", true}, {"pitch mm", true}});
  for (const ThreadRow& thread : known_threads())
    table.rows.push_back({std::string(thread.designation), format_fixed(thread.diameter_mm, 3),
                          format_fixed(thread.pitch_mm, 3), std::string(thread.standard)});
  return table;
}

Table findings_table() {
  Table table = two_columns("finding", "severity");
  table.columns.push_back({"what it says", false});
  for (const CatalogueEntry* entry : all_entries())
    table.rows.push_back(
        {std::string(entry->slug), std::string(name_of(entry->severity)), std::string(entry->message)});
  table.notes = {"`sheerpole explain missing-unit` shows one with an example and what to do."};
  return table;
}

std::string files_of(const BackendDescription& description) {
  std::string files;
  for (const std::string& file : description.outputs)
    files += (files.empty() ? "" : ", ") + file;
  for (const std::string& file : description.sometimes)
    files += std::string(files.empty() ? "" : ", ") + "sometimes " + file;
  for (const std::string& file : description.papers)
    files += ", with --pdf " + file;
  return files;
}

Table backends_table(const std::vector<BackendDescription>& outside) {
  Table table = two_columns("back end", "what it makes");
  table.columns.push_back({"files", false});
  std::vector<BackendDescription> descriptions;
  for (const auto& backend : built_in_backends())
    descriptions.push_back(backend->describe());
  descriptions.insert(descriptions.end(), outside.begin(), outside.end());
  for (const BackendDescription& description : descriptions)
    table.rows.push_back({description.name, description.summary, files_of(description)});
  return table;
}

/// The built-in ones and those outside that are named.
int list_backends(const OutsideOptions& options) {
  const OutsideBackends outside(options);
  if (!outside.findings().empty())
    print_error(render_terminal(outside.findings(), SourceSet(), error_has_colour()));
  print_out(render_text(backends_table(outside.descriptions())));
  return outside.fault() ? exit_fault : exit_clean;
}

Table tables_table() {
  Table table = two_columns("table", "what it shows");
  for (const NamedTable& named : rig_tables())
    table.rows.push_back({std::string(named.name), std::string(named.summary)});
  return table;
}

Table phases_table() {
  Table table = two_columns("phase", "what --print shows");
  for (const Listing& phase : phases())
    table.rows.push_back({phase.name, phase.help});
  return table;
}

} // namespace

const std::vector<Listing>& listings() {
  static const std::vector<Listing> all = {
      {"kinds", "what a rig file can declare"},
      {"ends", "the ends that a part can have"},
      {"units", "units of length, force, mass and so on"},
      {"threads", "screw threads known by name"},
      {"findings", "everything that can be wrong, by name"},
      {"back-ends", "what `build` can make"},
      {"tables", "what `show` can show"},
      {"phases", "what `check --print` can show"},
      {"completion", "every word of the language with its meaning, as JSON for an editor"},
  };
  return all;
}

int list_verb(const ListOptions& options) {
  const std::string& what = options.what;
  if (what != "back-ends" && !options.outside.programs.empty()) {
    print_error("sheerpole: --outside goes with `list back-ends`\n");
    return exit_usage;
  }
  if (what == "kinds")
    print_out(render_text(kinds_table()));
  else if (what == "ends")
    print_out(render_text(ends_table()));
  else if (what == "units")
    print_out(render_text(units_table()));
  else if (what == "threads")
    print_out(render_text(threads_table()));
  else if (what == "findings")
    print_out(render_text(findings_table()));
  else if (what == "back-ends")
    return list_backends(options.outside);
  else if (what == "tables")
    print_out(render_text(tables_table()));
  else if (what == "phases")
    print_out(render_text(phases_table()));
  else if (what == "completion")
    print_out(completion_json());
  else
    return exit_usage; // the command line takes only the words of listings()
  return exit_clean;
}

} // namespace sheerpole
