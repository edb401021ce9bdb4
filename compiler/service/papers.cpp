#include "service/papers.hpp"

#include <algorithm>
#include <array>
#include <exception>
#include <utility>

namespace sheerpole::service {

std::vector<BackendPapers> papers(const CheckedRig& checked, BackendList backends,
                                  const std::vector<std::string>& only, PaperSize size) {
  std::vector<BackendPapers> result;
  for (const auto& backend : backends) {
    const BackendDescription description = backend->describe();
    if (!only.empty() && std::find(only.begin(), only.end(), description.name) == only.end())
      continue;
    BackendPapers made{description.name, description.summary, {}, {}};
    BackendRequest request{checked};
    request.paper = size;
    request.printed = false; // papers drawn page by page are for a printer
    try {
      made.files = backend->generate(request).files;
    } catch (const std::exception& fault) {
      made.fault = fault.what();
    }
    result.push_back(std::move(made));
  }
  return result;
}

std::string_view media_type(std::string_view file) {
  using Ending = std::pair<std::string_view, std::string_view>;
  constexpr std::array endings{Ending{".html", "text/html"},    Ending{".svg", "image/svg+xml"},
                               Ending{".csv", "text/csv"},      Ending{".json", "application/json"},
                               Ending{".ics", "text/calendar"}, Ending{".md", "text/markdown"}};
  for (const auto& [ending, type] : endings)
    if (file.ends_with(ending))
      return type;
  return "text/plain";
}

} // namespace sheerpole::service
