#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// What every check came to, passed, found, not checked or waived, and every joint with its play.
struct Checks final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
