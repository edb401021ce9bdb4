#include "plugins/cut-list/cut_list.hpp"

#include "plugins/cut-list/cut_list_forms.hpp"

namespace sheerpole {

BackendDescription CutList::describe() const {
  return {.name = "cut-list",
          .summary = "every piece to cut with its length as a worked sum, ends and take-up",
          .outputs = {"cut-list.txt", "cut-list.csv", "cut-list.json"}};
}

OutputBundle CutList::generate(const BackendRequest& request) const {
  const std::vector<CutListBlock> blocks = cut_list_blocks(request.checked);
  return {{{"cut-list.txt", cut_list_text(request.checked, blocks)},
           {"cut-list.csv", cut_list_csv(request.checked, blocks)},
           {"cut-list.json", cut_list_json(request.checked, blocks)}}};
}

} // namespace sheerpole
