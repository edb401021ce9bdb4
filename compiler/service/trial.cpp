#include "service/trial.hpp"

#include <utility>

namespace sheerpole::service {

Trial try_settings(const OpenBoat& as_is, FileReader& reader, CompileOptions options,
                   std::vector<std::string> settings) {
  options.settings = std::move(settings);
  Trial trial{read_boat(as_is.root, reader, options), {}, {}};
  const Compilation& would_be = trial.boat.compiled;
  if (as_is.compiled.checked && would_be.checked) {
    trial.change =
        compare_rigs(*as_is.compiled.rig, *as_is.compiled.derived, *would_be.rig, *would_be.derived);
    trial.findings = findings_change(*as_is.compiled.checked, *would_be.checked);
  }
  return trial;
}

} // namespace sheerpole::service
