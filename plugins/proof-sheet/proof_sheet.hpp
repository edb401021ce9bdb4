#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Back end `proof-sheet`: how every length came about and how well it is known, stay by stay, for whoever
/// has to check it with a pencil.
class ProofSheet final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
