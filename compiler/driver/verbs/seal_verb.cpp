#include "backend/process/byte_text.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"

#include <filesystem>

namespace sheerpole::seal_verb {

namespace {

struct Options {
  SealRequest request;
  PaperOptions papers;
  std::string folder; ///< has to be empty, or not there
};

int run(const Options& options) {
  std::error_code ignored;
  if (std::filesystem::exists(options.folder, ignored) &&
      !std::filesystem::is_empty(options.folder, ignored)) {
    print_error("sheerpole: " + printable(options.folder) +
                " is not empty; a seal is of a folder that holds nothing else\n");
    return exit_usage;
  }
  SealRequest request = options.request;
  request.pdf = options.papers.pdf;
  request.paper = options.papers.paper;
  const auto bundle = make_seal(request);
  if (!bundle.ok())
    return bundle.error().code;
  if (const int code = write_and_tell(bundle.value(), options.folder, {}); code != exit_clean)
    return code;
  print_out("seal " + sha256(bundle.value().files.back().bytes) + "\n");
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("seal", "put rig, libraries and papers in one folder with a sum of each");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.request.file, "the rig file")->required();
  verb.add_option("--into", options.folder, "folder to write to; it must hold nothing else")->required();
  add_only(verb, options.request.only, "cut-list,survey-report");
  add_papers(verb, options.papers);
  add_shop(verb, options.request.rig);
  add_allowed_folders(verb, options.request.rig);
}

} // namespace sheerpole::seal_verb
