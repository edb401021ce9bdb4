#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// The list by which every pin and thread is looked at before the rig is used, and the sheet by which stays
/// are replaced one at a time.
class SignOff final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
