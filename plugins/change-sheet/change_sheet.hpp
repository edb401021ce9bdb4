#pragma once

#include "backend/backend.hpp"
#include "backend/change/change_words.hpp"

namespace sheerpole {

/// Back end `change-sheet`: what a change of the rig does, for whoever has to make it: the stays that
/// change and no others, why, whether the line that hangs there lives on, what to order. Makes nothing when
/// there is nothing to compare with.
struct ChangeSheet final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

/// The sheet as plain text, and as JSON. `request.previous` must not be null.
std::string change_text(const BackendRequest& request);
std::string change_json(const BackendRequest& request);

} // namespace sheerpole
