#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// A back end to copy: one line for each piece of line, with its length.
class Template final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
