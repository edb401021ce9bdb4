#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Back end `take-up`: what every adjuster has, what will be drawn from it and what is left.
class TakeUpSheet final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
