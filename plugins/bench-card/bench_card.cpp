#include "plugins/bench-card/bench_card.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/bench-card/card_page.hpp"

namespace sheerpole {

BackendDescription BenchCard::describe() const {
  return {.name = "bench-card",
          .summary = "a page for each piece: marks from one zero, the order of work, where to sign",
          .outputs = {"bench-cards.html"},
          .papers = {"bench-cards.pdf"}};
}

OutputBundle BenchCard::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  const std::string boat = boat_title(checked);
  std::vector<Drawing> pages;
  for (const CardPiece& card : card_pieces(checked))
    for (Drawing& page : card_pages(card, boat, request.paper))
      pages.push_back(std::move(page));
  const std::string heading = "Bench cards of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"bench-cards.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"bench-cards.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
