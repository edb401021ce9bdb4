#include "plugins/receiving-card/receiving_card.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/receiving-card/goods_pages.hpp"

namespace sheerpole {

BackendDescription ReceivingCard::describe() const {
  return {.name = "receiving-card",
          .summary = "what comes in against what the file asks for: sizes, threads, counts, boxes to tick",
          .outputs = {"receiving-card.html"},
          .papers = {"receiving-card.pdf"}};
}

OutputBundle ReceivingCard::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  std::vector<Drawing> pages = goods_pages(request.checked, boat, request.paper);
  const std::string heading = "Receiving card of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"receiving-card.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"receiving-card.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
