#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/emergency-splice-card/spare_page.hpp"

namespace sheerpole {

BackendDescription EmergencySpliceCard::describe() const {
  return {.name = "emergency-splice-card",
          .summary =
              "for each rope and wire: the spare length to carry, and how a stay is made of it aboard",
          .outputs = {"emergency-splice-cards.html"},
          .papers = {"emergency-splice-cards.pdf"}};
}

OutputBundle EmergencySpliceCard::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  std::vector<Drawing> pages;
  for (const SpareLine& spare : spare_lines(request.checked))
    for (Drawing& page : spare_pages(spare, boat, request.paper))
      pages.push_back(std::move(page));
  if (pages.empty())
    pages = nothing_to_carry(boat, request.paper);
  const std::string heading = "Emergency splice cards of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"emergency-splice-cards.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"emergency-splice-cards.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
