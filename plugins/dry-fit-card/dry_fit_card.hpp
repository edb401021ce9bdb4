#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// One page for each stay, to be taken aloft: what to hang, where the bearings should come, what to look at
/// and write down before anything is cut.
class DryFitCard final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
