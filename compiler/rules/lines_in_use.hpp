#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// What a stay's pieces are made of, each once, from aloft to deck.
std::vector<MaterialId> lines_of(const DerivedStay& stay);

/// Every line that a stay of the rig is made of, or that lashes one, or hung there before, in the order of
/// the files. What a library has beyond that is no business of this boat.
std::vector<MaterialId> lines_in_use(const Rig& rig, const Derived& derived);

/// Whether a rope is of HMPE by the word in its construction.
bool is_hmpe(const LineMaterial& material);

} // namespace sheerpole
