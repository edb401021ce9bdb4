#include "plugins/findings/findings.hpp"

namespace sheerpole {

BackendDescription Findings::describe() const {
  return {.name = "findings",
          .summary = "the warnings and notes about the rig, each with its place and reason",
          .outputs = {"findings.txt", "findings.json", "findings.sarif"}};
}

OutputBundle Findings::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  return {{{"findings.txt", render_terminal(checked.findings(), checked.sources(), false)},
           {"findings.json", render_json(checked.findings(), checked.sources())},
           {"findings.sarif", render_sarif(checked.findings(), checked.sources())}}};
}

} // namespace sheerpole
