#include "base/byte_text.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/page/page_file.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"

#include <filesystem>

namespace sheerpole::page_verb {

namespace {

namespace fs = std::filesystem;

struct Options {
  std::string file;
  std::string into; ///< the page that is made
  std::string seal; ///< a sealed folder; empty: there is none
  std::string page; ///< the page that it is made of
  CompileOptions rig;
};

/// The files of the boat by their paths beside each other, and which of them is hers.
struct BoatTexts {
  std::string root;
  std::vector<SealedSource> files;
};

Result<BoatTexts, std::string> texts_of(const Compilation& compilation) {
  std::vector<SealedSource> sources;
  const SourceSet& texts = *compilation.sources;
  for (std::uint32_t i = 0; i < texts.size(); ++i)
    sources.push_back({texts[SourceId{i}].name(), texts[SourceId{i}].file_bytes()});
  const std::vector<std::string> paths = paths_in_seal(sources);
  const std::string first = texts[compilation.names->root].name();
  BoatTexts result;
  for (std::size_t i = 0; i < sources.size(); ++i) {
    const std::string path = paths[i].substr(seal_rig_folder.size());
    if (leads_out(path) || printable(path) != path)
      return "sheerpole: " + printable(path) +
             " is no name that a page can hold; nothing was written. Give the file a name without "
             "backslashes "
             "and signs that do not show\n";
    if (sources[i].path == first)
      result.root = path;
    result.files.push_back({path, sources[i].bytes});
  }
  return result;
}

/// What the page is given to hold its boat against a seal, or why it is not.
Result<Json, std::string> seal_json(const std::string& folder, const BoatTexts& boat) {
  DiskFileReader disk;
  const auto text = [&](std::string_view name) {
    return disk.read((fs::path(folder) / name).string(), largest_source_bytes);
  };
  const auto list = text(seal_sums);
  const auto facts = text(seal_facts);
  const auto words = text(seal_words);
  for (const auto& [name, read] : {std::pair(seal_sums, &list), {seal_facts, &facts}, {seal_words, &words}})
    if (!read->ok())
      return "sheerpole: there is no " + std::string(name) + " in " + printable(folder) +
             ": it is no sealed folder, or a part of it is missing\n";
  std::vector<std::string> bad_lines;
  const SealSums sums = read_sums(list.value(), bad_lines);
  const auto how = how_sealed(facts.value(), sums);
  if (!how || how->rig != std::string(seal_rig_folder) + boat.root)
    return "sheerpole: " + printable(folder) + " is not the seal of " + printable(boat.root) + "\n";
  for (const SealedSource& file : boat.files) {
    const auto line = sums.find(std::string(seal_rig_folder) + file.path);
    if (line == sums.end() || line->second != sha256(file.bytes))
      return "sheerpole: " + printable(file.path) + " is not as it was sealed in " + printable(folder) +
             "; nothing was written. Seal the boat as she is, or name the rig file of the sealed folder\n";
  }
  Json names = Json::array();
  for (const auto& backend : choose_backends(how->only, {}, true).backends)
    names.push_back(backend->describe().name);
  std::error_code ignored;
  const bool is_signed =
      fs::is_regular_file(fs::symlink_status(fs::path(folder) / seal_signature, ignored));
  return Json{{"sums", list.value()},
              {"facts", facts.value()},
              {"words", words.value()},
              {"back_ends", std::move(names)},
              {"signed", is_signed}};
}

int failed(const std::string& words, int code) {
  print_error(words);
  return code;
}

int run(const Options& options) {
  const fs::path into(options.into);
  if (into.filename().empty())
    return failed("sheerpole: " + printable(options.into) + " is no name of a file\n", exit_usage);
  auto page = read_page(options.page);
  if (!page.ok())
    return failed(page.error().words, exit_usage);
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!compilation.findings.empty() && compilation.has_errors)
    print_error(show_findings(compilation, "text", error_has_colour()));
  if (!compilation.checked)
    return failed("nothing was written: an error stands\n", exit_errors);
  const auto boat = texts_of(compilation);
  if (!boat.ok())
    return failed(boat.error(), exit_usage);
  Json files = Json::object();
  for (const SealedSource& file : boat.value().files)
    files[file.path] = file.bytes;
  Json given = {{"boat", boat.value().root}, {"files", std::move(files)}, {"seal", nullptr}};
  if (!options.seal.empty()) {
    auto seal = seal_json(options.seal, boat.value());
    if (!seal.ok())
      return failed(seal.error(), exit_errors);
    given["seal"] = std::move(seal.value());
  }
  if (!has_compiler(page.value()))
    print_error("sheerpole: the page was built without a compiler inside, so what is made of it will show "
                "no boat\n");
  OutputBundle bundle;
  bundle.files.push_back({into.filename().string(), page_given(std::move(page.value()), given)});
  std::vector<std::string> read;
  for (std::uint32_t i = 0; i < compilation.sources->size(); ++i)
    read.push_back((*compilation.sources)[SourceId{i}].name());
  if (!options.page.empty())
    read.push_back(options.page);
  return write_and_tell(bundle, into.has_parent_path() ? into.parent_path().string() : ".", read);
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("page", "put a boat and her libraries in one page for a phone or a laptop");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.file, "the rig file")->required();
  verb.add_option("--into", options.into, "the page that is written")->required()->type_name("FILE");
  verb.add_option("--seal", options.seal,
                  "a sealed folder of the boat; the page says whether she is as she was sealed")
      ->type_name("FOLDER");
  add_page_file(verb, options.page);
  add_allowed_folders(verb, options.rig);
}

} // namespace sheerpole::page_verb
