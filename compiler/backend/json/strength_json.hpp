#pragma once

#include "backend/json/json.hpp"

namespace sheerpole {

/// The chain of break loads of a stay: `{links, line, weakest, unknown}`; the last three are places in
/// `links`, null where there is none. Forces in newtons, unrounded.
Json chain_json(const Rig& rig, const StayChain& chain, const SourceSet& sources);

/// Every load-screening: `[{method, publication, of, inputs, results, not_checked, notes, panels}]`. Values
/// in the coherent SI unit.
Json screenings_json(const Rig& rig, const Derived& derived, const SourceSet& sources);

} // namespace sheerpole
