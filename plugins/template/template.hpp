#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// A back end to copy: one line for each piece of line, with its length.
struct Template final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
