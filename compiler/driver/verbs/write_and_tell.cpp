#include "driver/verbs/write_and_tell.hpp"

#include "driver/terminal.hpp"
#include "driver/write_bundle.hpp"

namespace sheerpole {

int write_and_tell(const OutputBundle& bundle, const std::string& folder, std::vector<std::string>* paths) {
  const auto written = write_bundle(bundle, folder);
  if (!written.ok()) {
    print_error("sheerpole: " + describe(written.error()) + "; nothing was written\n");
    return is_fault(written.error()) ? exit_fault : exit_usage;
  }
  for (const std::string& path : written.value())
    print_out("wrote " + path + "\n");
  if (paths != nullptr)
    *paths = written.value();
  return exit_clean;
}

} // namespace sheerpole
