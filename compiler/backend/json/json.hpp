#pragma once

#include "results/checked_rig.hpp"

#include <nlohmann/json.hpp>

#include <string>

namespace sheerpole {

/// Keys stay in the order in which they are written: the same rig gives the same bytes.
using Json = nlohmann::ordered_json;

/// Millimetres as a number, rounded to a millionth of a millimetre: the last bits of a sum of metres say
/// nothing.
double json_millimetres(Length length);
/// The same, or null.
Json json_millimetres(const std::optional<Length>& length);

/// `{class, note, written, assumptions, place}`; place is `{file, line, column}` or null.
Json provenance_json(const Provenance& provenance, const SourceSet& sources);

/// `{name, amount_mm, how, provenance}`
Json term_json(const Term& term, const SourceSet& sources);

/// `{name, unknown, unknown_source, known_mm, terms}`; unknown_source is null for a known length.
Json sum_json(const LengthSum& sum, const SourceSet& sources);

/// The rig as the files describe it.
Json rig_json(const CheckedRig& checked);

/// Everything calculated, in the order of the stays.
Json derived_json(const CheckedRig& checked);

/// The whole request as a back end receives it: rig, derived, draft reasons.
Json request_json(const CheckedRig& checked);

/// Two blanks of indent and a line end. Bytes that are not UTF-8 become U+FFFD.
std::string write_json(const Json& json);

} // namespace sheerpole
