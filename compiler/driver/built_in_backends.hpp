#pragma once

#include "backend/backend.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

using Backends = std::vector<std::unique_ptr<Backend>>;

/// Every back end that is linked in, in the order in which `list back-ends` shows them.
Backends built_in_backends();

/// Those that `build` runs when none is named: all but the ones that serve tests.
Backends usual_backends();

/// That of this name, which is known to be linked in.
std::unique_ptr<Backend> built_in_backend(std::string_view name);

/// Which back end writes which file: no two of them one.
class FileClaims {
public:
  void add(std::string file, std::string owner) { claims_.push_back({std::move(file), std::move(owner)}); }

  /// Why this one can not have the file, in words that go on from "but"; nothing when it can.
  std::optional<std::string> clash(const std::string& file, const std::string& owner) const;

private:
  struct Claim {
    std::string file;
    std::string owner;
  };
  std::vector<Claim> claims_;
};

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