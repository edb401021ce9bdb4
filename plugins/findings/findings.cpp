#include "plugins/findings/findings.hpp"
#include "wording/papers/index_words.hpp"

namespace sheerpole {

BackendDescription Findings::describe() const {
  return {.name = "findings",
          .summary = say(IndexPhrase::warnings_and_notes_about_rig),
          .outputs = {"findings.txt", "findings.json", "findings.sarif"}};
}

OutputBundle Findings::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  const CheckTotals totals = count_results(checked.results());
  return {{{"findings.txt", render_terminal(checked.findings(), checked.sources(), false, totals)},
           {"findings.json", render_json(checked.findings(), checked.sources(), totals)},
           {"findings.sarif", render_sarif(checked.findings(), checked.sources(), totals)}}};
}

} // namespace sheerpole
