#include "driver/make_papers.hpp"

#include "base/edit_distance.hpp"
#include "driver/built_in_backends.hpp"

#include <algorithm>
#include <exception>
#include <iterator>

namespace sheerpole {

ChosenBackends choose_backends(const std::vector<std::string>& only,
                               const std::vector<std::string>& outside_names, bool any_name) {
  ChosenBackends result;
  if (only.empty()) {
    result.backends = usual_backends();
    return result;
  }
  std::vector<std::string> names = outside_names;
  for (const auto& backend : built_in_backends())
    names.push_back(backend->describe().name);
  for (const std::string& name : only) {
    if (std::find(outside_names.begin(), outside_names.end(), name) != outside_names.end())
      continue;
    Backends all = built_in_backends();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const auto& backend) { return backend->describe().name == name; });
    if (found != all.end()) {
      result.backends.push_back(std::move(*found));
    } else if (!any_name) {
      result.unknown = "sheerpole: there is no back end `" + name + "`";
      if (const auto near = nearest_name(name, names))
        result.unknown += "; did you mean `" + *near + "`?";
      result.unknown += "\n`sheerpole list back-ends` shows all.\n";
      return result;
    }
  }
  return result;
}

std::string make_papers(const Backends& backends, const BackendRequest& request, FileClaims& claims,
                        OutputBundle& bundle, const std::function<void(const std::string&)>& begins) {
  std::string faults;
  for (const auto& backend : backends) {
    const std::string name = backend->describe().name;
    begins(name);
    try {
      OutputBundle made = backend->generate(request);
      for (const OutputFile& file : made.files)
        claims.add(file.name, name);
      for (const PagedFile& file : made.papers)
        claims.add(file.name, name);
      std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
      std::move(made.papers.begin(), made.papers.end(), std::back_inserter(bundle.papers));
    } catch (const std::exception& error) {
      faults += "sheerpole: fault of the back end " + name + ": " + error.what() + "\n";
    }
  }
  return faults;
}

} // namespace sheerpole
