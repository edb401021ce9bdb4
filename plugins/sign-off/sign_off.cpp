#include "plugins/sign-off/sign_off.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "plugins/sign-off/sign_off_pages.hpp"

#include <iterator>
#include <utility>

namespace sheerpole {

BackendDescription SignOff::describe() const {
  return {.name = "sign-off",
          .summary = "every pin and thread to be ticked, aloft to deck; a sheet for one stay at a time",
          .outputs = {"sign-off.html"},
          .papers = {"sign-off.pdf"}};
}

OutputBundle SignOff::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  std::vector<Drawing> pages = sign_off_pages(request.checked, boat, request.paper);
  std::vector<Drawing> more = replacement_pages(request.checked, boat, request.paper);
  std::move(more.begin(), more.end(), std::back_inserter(pages));
  const std::string heading = "Sign-off of " + boat;
  OutputBundle bundle;
  bundle.files.push_back({"sign-off.html", html_of_pages(heading, pages)});
  bundle.papers.push_back({"sign-off.pdf", heading, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
