#include "backend/process/byte_text.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/exit_code.hpp"
#include "driver/seal/make_seal.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"

#include <filesystem>

namespace sheerpole {

int seal_verb(const SealOptions& options) {
  std::error_code ignored;
  if (std::filesystem::exists(options.folder, ignored) &&
      !std::filesystem::is_empty(options.folder, ignored)) {
    print_error("sheerpole: " + printable(options.folder) +
                " is not empty; a seal is of a folder that holds nothing else\n");
    return exit_usage;
  }
  const auto bundle = make_seal({.file = options.file,
                                 .rig = options.rig,
                                 .only = options.only,
                                 .pdf = options.pdf,
                                 .paper = options.paper});
  if (!bundle.ok())
    return bundle.error().code;
  if (const int code = write_and_tell(bundle.value(), options.folder); code != exit_clean)
    return code;
  print_out("seal " + sha256(bundle.value().files.back().bytes) + "\n");
  return exit_clean;
}

} // namespace sheerpole
