#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Which piece is cut from which spool, coil or offcut, for one boat or a fleet: as text and drawing for
/// the bench, as a flat table, and as the records of what is then in stock.
struct SpoolPlanBackend final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
