#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// One card for each piece, to be carried to the bench: what to mark, what to thread on, in which order.
class BenchCard final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
