#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Days on which something about the rig is due, as iCalendar (RFC 5545).
class Calendar final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
