#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// A sheet of labels to cut apart, one for each end of each piece.
class Labels final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
