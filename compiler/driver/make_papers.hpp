#pragma once

#include "backend/backend.hpp"
#include "driver/outside/file_claims.hpp"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace sheerpole {

using Backends = std::vector<std::unique_ptr<Backend>>;

/// The built-in back ends that are asked for.
struct ChosenBackends {
  Backends backends;
  std::string unknown; ///< what to say of a name that is none; empty when all are known
};

/// `only` names them; empty: the usual ones. Those outside are made without being asked for, and may be
/// named as well. `any_name` takes a name that is not known for that of one which could not say it.
ChosenBackends choose_backends(const std::vector<std::string>& only,
                               const std::vector<std::string>& outside_names, bool any_name);

/// Lets each make its papers for the bundle. `begins` is told each name before. Returns what is to be said
/// of those that have a fault, a line each; empty when there is none.
std::string make_papers(const Backends& backends, const BackendRequest& request, FileClaims& claims,
                        OutputBundle& bundle, const std::function<void(const std::string&)>& begins);

} // namespace sheerpole
