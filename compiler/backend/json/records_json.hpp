#pragma once

#include "backend/json/json.hpp"

#include <vector>

namespace sheerpole {

/// `[{name, text, provenance}]`
Json particulars_json(const std::vector<Particular>& particulars, const SourceSet& sources);

/// Adds states, records, limits, rules, waivers, expectations, inspections and differences to the JSON of a
/// rig.
void add_records_json(const CheckedRig& checked, Json& rig_json);

} // namespace sheerpole
