#pragma once

#include "backend/json/json.hpp"

#include <vector>

namespace sheerpole {

/// `[{name, text, provenance, si, tolerance_si, values_si, names}]`: numbers in the coherent SI unit of the
/// fact (m, N, K, a share of one); si is zero for a text, a word, a date or a name.
Json particulars_json(const std::vector<Particular>& particulars, const SourceSet& sources);

/// Adds states, records, limits, rules, waivers, expectations, inspections and differences to the JSON of a
/// rig.
void add_records_json(const CheckedRig& checked, Json& rig_json);

} // namespace sheerpole
