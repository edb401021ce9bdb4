#include "plugins/cut-list/cut_list.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/text_paper.hpp"
#include "plugins/cut-list/cut_list_forms.hpp"

namespace sheerpole {

BackendDescription CutList::describe() const {
  return {.name = "cut-list",
          .summary = "every piece to cut with its length as a worked sum, ends and take-up",
          .outputs = {"cut-list.txt", "cut-list.csv", "cut-list.json"},
          .papers = {"cut-list.pdf"}};
}

OutputBundle CutList::generate(const BackendRequest& request) const {
  const std::vector<CutListBlock> blocks = cut_list_blocks(request.checked);
  const std::string text = cut_list_text(request.checked, blocks);
  OutputBundle bundle;
  bundle.files = {{"cut-list.txt", text},
                  {"cut-list.csv", cut_list_csv(request.checked, blocks)},
                  {"cut-list.json", cut_list_json(request.checked, blocks)}};
  // The first page names what is a draft, and so does each piece that is one: the others may be cut.
  if (request.printed)
    bundle.papers.push_back(
        text_paper({.file = "cut-list.pdf", .name = "Cut list", .about = boat_title(request.checked)}, text,
                   request.paper));
  return bundle;
}

} // namespace sheerpole
