#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// What every check came to, passed, found, not checked or waived, and every joint with its play.
class Checks final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
