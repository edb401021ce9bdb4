#include "plugins/labels/labels.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/labels/label_sheet.hpp"

namespace sheerpole {

BackendDescription Labels::describe() const {
  return {.name = "labels",
          .summary =
              "labels to cut apart, one for each end of each piece: what it is, when and by whom made",
          .outputs = {"labels.html"},
          .papers = {"labels.pdf"}};
}

OutputBundle Labels::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  std::vector<Drawing> pages = label_pages(piece_labels(request.checked), boat, request.paper);
  const std::string heading = "Labels of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"labels.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"labels.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
