#pragma once

#include "calculate/strength/stay_chain.hpp"

#include <string>

namespace sheerpole {

/// What a link lacks: "cord of lashing-260, knot-factor of lashing-260". Empty when it lacks nothing.
std::string lacking_words(const Rig& rig, const ChainLink& link);

/// What the unknown links lack, each property once: "break-load of tang-10, plate-10; efficiency of
/// long-bury". Empty when all are known.
std::string unknown_words(const Rig& rig, const StayChain& chain);

} // namespace sheerpole
