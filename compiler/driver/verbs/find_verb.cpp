#include "backend/table/table.hpp"
#include "base/edit_distance.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/find/find_in_rig.hpp"
#include "driver/fleet/fleet_folders.hpp"
#include "driver/fleet/in_order.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "kinds/kind_row.hpp"
#include "service/compile.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace sheerpole::find_verb {

namespace {

struct Options {
  std::string what;               ///< see find/find_in_rig.hpp
  std::vector<std::string> files; ///< or `@list.txt`
  CompileOptions rig;             ///< for each of them
  std::string form = "text";      ///< text, csv, json
  unsigned workers = 0;           ///< 0: as many as processors
};

/// What one file came to.
struct Looked {
  FoundInRig found;
  std::string findings; ///< when she has an error and could not be looked through
};

/// What all of them came to.
struct Totals {
  std::size_t rows = 0;
  std::size_t boats = 0; ///< that have any
  std::size_t read = 0;  ///< that could be looked through
  std::size_t stays = 0;
  std::size_t undated = 0;
};

Looked look(const std::string& file, const Sought& sought, const CompileOptions& rig, bool colour) {
  DiskFileReader reader;
  const Compilation compilation = compile(file, reader, rig);
  Looked result;
  if (compilation.rig)
    result.found = find_in_rig(sought, *compilation.rig, *compilation.sources);
  else
    result.findings = show_findings(compilation, "text", colour);
  return result;
}

std::string amount(std::size_t count, const std::string& one, const std::string& several) {
  return std::to_string(count) + " " + (count == 1 ? one : several);
}

/// What stands below the table.
std::vector<std::string> notes_of(const Sought& sought, const Totals& totals, std::size_t files) {
  std::vector<std::string> notes{amount(totals.rows, "row", "rows") + ", " +
                                 amount(totals.boats, "boat", "boats") + " of " + std::to_string(files)};
  if (totals.read < files)
    notes.push_back(
        amount(files - totals.read, "file has an error and was", "files have an error and were") +
        " not looked through");
  if (sought.before && totals.undated > 0)
    notes.push_back("of " + amount(totals.undated, "stay", "stays") + " among " +
                    std::to_string(totals.stays) +
                    " nothing says how old it is: neither made nor installed, nor when its line was made");
  if (totals.rows > 0 || sought.before)
    return notes;
  std::vector<std::string> kinds;
  for (const KindRow& kind : all_kinds())
    kinds.emplace_back(kind.name);
  const auto near = nearest_name(sought.text, kinds);
  if (near && *near != sought.text)
    notes.push_back("did you mean `" + *near + "`?");
  return notes;
}

using Cells = std::vector<std::string>;

Table empty_table() {
  Table table;
  table.columns = {{"file"},         {"boat"},    {"stay"},  {"side"},   {"item"},
                   {"number", true}, {"matched"}, {"value"}, {"source"}, {"place"}};
  return table;
}

Cells cells_of(const std::string& file, const FoundRow& row, bool for_terminal) {
  Cells cells{file,        row.boat,  row.stay,   row.side, row.item, std::to_string(row.count),
              row.matched, row.value, row.source, row.place};
  if (for_terminal)
    for (std::string& cell : cells)
      cell = printable(cell);
  return cells;
}

std::string as_json(const Table& table, const Totals& totals, std::size_t files) {
  using Json = nlohmann::ordered_json;
  Json json{{"format", "sheerpole-found"},
            {"version", 1},
            {"found", Json::array()},
            {"total",
             {{"rows", totals.rows},
              {"boats", totals.boats},
              {"files", files},
              {"files_read", totals.read},
              {"stays", totals.stays},
              {"stays_without_date", totals.undated}}}};
  for (const Cells& row : table.rows) {
    Json found;
    for (std::size_t i = 0; i < row.size(); ++i)
      found[table.columns[i].heading] = row[i].empty() ? Json() : Json(row[i]);
    found["number"] = std::stoi(row[5]);
    json["found"].push_back(std::move(found));
  }
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

int run(const Options& options) {
  const auto sought = read_sought(options.what);
  if (!sought.ok()) {
    print_error(sought.error());
    return exit_usage;
  }
  DiskFileReader reader;
  const auto listed = file_arguments(options.files, reader);
  if (!listed.ok()) {
    print_error(listed.error());
    return exit_usage;
  }
  const std::vector<std::string>& files = listed.value();
  CompileOptions rig = options.rig;
  rig.rig_only = true;
  const bool colour = error_has_colour();
  keep_memory();
  Table table = empty_table();
  Totals totals;
  ProgressLine progress(files.size());
  in_order<Looked>(files.size(), workers_for(options.workers),
                   {.work = [&](std::size_t i) { return look(files[i], sought.value(), rig, colour); },
                    .deliver =
                        [&](std::size_t i, const Looked& looked) {
                          progress.clear();
                          print_error(looked.findings);
                          for (const FoundRow& row : looked.found.rows)
                            table.rows.push_back(cells_of(files[i], row, options.form == "text"));
                          totals.rows += looked.found.rows.size();
                          totals.boats += looked.found.rows.empty() ? 0 : 1;
                          totals.read += looked.findings.empty() ? 1 : 0;
                          totals.stays += looked.found.stays;
                          totals.undated += looked.found.undated;
                        },
                    .progress = [&](std::size_t done) { progress.show(done); }});
  progress.clear();
  if (options.form == "json") {
    print_out(as_json(table, totals, files.size()));
  } else if (options.form == "csv") {
    print_out(render_csv(table));
    for (const std::string& note : notes_of(sought.value(), totals, files.size()))
      print_error(note + "\n");
  } else {
    if (!table.rows.empty())
      print_out(render_text(table) + "\n");
    for (const std::string& note : notes_of(sought.value(), totals, files.size()))
      print_out(note + "\n");
  }
  return totals.read < files.size() ? exit_errors : exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("find", "find which boats carry a part, a size or a batch, or what is old");
  Options& options = options_of(verb, asked, run);
  verb.add_option("WHAT", options.what,
                  "a part, a kind, words of a title, a batch; a size or a thread: \"1/2 in\", \"12 mm\", "
                  "M12; or an age: \"before 2016-05-01\"")
      ->required();
  verb.add_option("FILE", options.files,
                  "the rig files; @list.txt stands for those that list.txt names, one a line")
      ->required();
  add_table_form(verb, options.form);
  add_workers(verb, options.workers);
  add_allowed_folders(verb, options.rig);
}

} // namespace sheerpole::find_verb
