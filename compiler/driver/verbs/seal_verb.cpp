#include "base/byte_text.hpp"
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
  Signer signer;
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
  const auto sealed = make_seal(request);
  if (!sealed.ok())
    return sealed.error().code;
  OutputBundle bundle = sealed.value();
  const std::string sums = bundle.files.back().bytes;
  const bool is_signed = !options.signer.program.empty();
  if (is_signed) {
    std::string fault;
    const auto signature = sign_sums(options.signer, sums, fault);
    if (!signature) {
      print_error("sheerpole: " + printable(options.signer.program) + " did not sign: " + printable(fault) +
                  "; nothing was sealed\n");
      return exit_usage;
    }
    bundle.files.push_back({std::string(seal_signature), *signature});
  }
  if (const int code = write_and_tell(bundle, options.folder, {}); code != exit_clean)
    return code;
  print_out("seal " + sha256(sums) + "\n");
  if (!is_signed)
    print_out("It is a sum and no signature: it will say whether anything was altered, not who made it.\n");
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("seal", "put rig, libraries and papers in one folder with a sum of each");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.request.file, "the rig file")->required();
  verb.add_option("--into", options.folder, "folder to write to; it must hold nothing else")
      ->required()
      ->type_name("FOLDER");
  CLI::Option* const program =
      verb.add_option("--sign-with", options.signer.program,
                      "a program that signs the list of sums as ssh-keygen -Y does, by its path");
  CLI::Option* const key =
      verb.add_option("--key", options.signer.key, "the file of the key to sign with")->needs(program);
  program->type_name("PROGRAM")->needs(key);
  key->type_name("FILE");
  add_only(verb, options.request.only, "cut-list,survey-report");
  add_papers(verb, options.papers);
  add_shop(verb, options.request.rig);
  add_allowed_folders(verb, options.request.rig);
}

} // namespace sheerpole::seal_verb
