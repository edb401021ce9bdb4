#include "driver/verbs/write_depends.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/terminal.hpp"
#include "driver/write_bundle.hpp"

#include <filesystem>

namespace sheerpole {

int write_depends(const Dependencies& dependencies, const std::string& file) {
  const auto text = write_dependencies(dependencies);
  if (!text) {
    print_error("sheerpole: " + printable(file) +
                " can not be written: the name of a file that was read or made has a line end, a tab or a "
                "backslash at its end\n");
    return exit_usage;
  }
  const std::filesystem::path path(file);
  OutputBundle bundle;
  bundle.files.push_back({path.filename().generic_string(), *text});
  const std::string folder = path.parent_path().generic_string();
  if (!write_bundle(bundle, folder.empty() ? "." : folder).ok()) {
    print_error("sheerpole: can not write " + printable(file) + "\n");
    return exit_usage;
  }
  return exit_clean;
}

} // namespace sheerpole
