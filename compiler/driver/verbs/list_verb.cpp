#include "backend/json/table_json.hpp"
#include "backend/table/rig_tables.hpp"
#include "diagnostics/catalogue.hpp"
#include "diagnostics/render.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/phases.hpp"
#include "driver/reference/pages.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "kinds/glossary.hpp"
#include "kinds/kind_row.hpp"
#include "units/format_length.hpp"
#include "units/thread.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace sheerpole::list_verb {

namespace {

struct Options {
  std::string what;          ///< the name of one of the listings
  std::string form = "text"; ///< text, csv, json
  OutsideOptions outside;    ///< for `back-ends`
};

void print_table(const Table& table, const Options& options) {
  if (options.form == "json")
    print_out(render_json(table, {.table = options.what, .boat = std::nullopt}));
  else
    print_out(options.form == "csv" ? render_csv(table) : render_text(table));
}

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

Table words_table() {
  Table table = two_columns("word", "what it is");
  for (const GlossaryRow& row : glossary())
    table.rows.push_back({std::string(row.word) + (row.also.empty() ? "" : ", " + std::string(row.also)),
                          std::string(row.meaning)});
  table.notes = {"`sheerpole explain bury` shows how a rig file says it."};
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
int list_backends(const Options& options) {
  const OutsideBackends outside(options.outside);
  if (!outside.findings().empty())
    print_error(render_terminal(outside.findings(), SourceSet(), error_has_colour()));
  print_table(backends_table(outside.descriptions()), options);
  return outside.fault() ? exit_fault : exit_clean;
}

Table tables_table() {
  Table table = two_columns("table", "what it shows");
  for (const NamedTable& named : rig_tables())
    table.rows.push_back({std::string(named.name), say(named.summary)});
  return table;
}

Table phases_table() {
  Table table = two_columns("phase", "what --print shows");
  for (const Phase& phase : phases())
    table.rows.push_back({std::string(phase.name), std::string(phase.help)});
  return table;
}

/// A word after `list`.
struct Listing {
  std::string_view name;
  Table (*table)() = nullptr; ///< what it shows; nullptr: what `show` does
  int (*show)(const Options&) = nullptr;
};

int list_completion(const Options& options) {
  if (options.form == "csv") {
    print_error("sheerpole: `list completion` is JSON and no table; leave --form out\n");
    return exit_usage;
  }
  print_out(completion_json());
  return exit_clean;
}

constexpr std::array listings{
    Listing{"words", words_table},
    Listing{"kinds", kinds_table},
    Listing{"ends", ends_table},
    Listing{"units", units_table},
    Listing{"threads", threads_table},
    Listing{"findings", findings_table},
    Listing{"back-ends", nullptr, list_backends},
    Listing{"tables", tables_table},
    Listing{"phases", phases_table},
    Listing{"completion", nullptr, list_completion},
};

int run(const Options& options) {
  if (options.what != "back-ends" && !options.outside.programs.empty()) {
    print_error("sheerpole: --outside goes with `list back-ends`\n");
    return exit_usage;
  }
  const auto* const listing =
      std::find_if(listings.begin(), listings.end(),
                   [&options](const Listing& one) { return one.name == options.what; });
  if (listing == listings.end())
    return exit_usage; // the command line takes only these words
  if (listing->table == nullptr)
    return listing->show(options);
  print_table(listing->table(), options);
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("list", "list what there is: kinds of parts, units, findings, tables");
  Options& options = options_of(verb, asked, run);
  std::vector<std::string> words;
  for (const Listing& listing : listings)
    words.emplace_back(listing.name);
  verb.add_option("WHAT", options.what, "one of: " + choices(words))
      ->required()
      ->check(CLI::IsMember(words));
  add_table_form(verb, options.form);
  add_outside(verb, options.outside);
}

} // namespace sheerpole::list_verb
