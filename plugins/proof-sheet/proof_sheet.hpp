#pragma once

#include "backend/backend.hpp"
#include "backend/text_page.hpp"

namespace sheerpole {

/// Everything that is known of the length of one stay.
void print_stay_proof(const CheckedRig& checked, const DerivedStay& stay, TextPage& page);

/// "pellimoor.rig:82", or nothing.
std::string place_words(const CheckedRig& checked, const std::optional<Span>& place);

/// How well its cut is known, and what to measure next.
void print_uncertainty(const CheckedRig& checked, const DerivedStay& stay, TextPage& page);

/// Back end `proof-sheet`: how every length came about and how well it is known, stay by stay, for whoever
/// has to check it with a pencil.
struct ProofSheet final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
