#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/dry-fit-card/fit_page.hpp"

namespace sheerpole {

BackendDescription DryFitCard::describe() const {
  return {.name = "dry-fit-card",
          .summary = "a page for each stay: what to hang before cutting, where it should come, what to see",
          .outputs = {"dry-fit-cards.html"},
          .papers = {"dry-fit-cards.pdf"}};
}

OutputBundle DryFitCard::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  std::vector<Drawing> pages;
  for (const StayFit& fit : stay_fits(request.checked))
    for (Drawing& page : fit_pages(fit, boat, request.paper))
      pages.push_back(std::move(page));
  const std::string heading = "Dry-fit cards of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"dry-fit-cards.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"dry-fit-cards.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
