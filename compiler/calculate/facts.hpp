#pragma once

#include "model/rig.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The number of this name in its coherent SI unit, with its tolerance in the same; nothing when it is not
/// stated.
std::optional<Sourced<double>> fact_number(const std::vector<Particular>& facts, std::string_view name);
std::optional<Sourced<Length>> fact_length(const std::vector<Particular>& facts, std::string_view name);
std::optional<Sourced<Force>> fact_force(const std::vector<Particular>& facts, std::string_view name);
/// A text, a word or a date; empty when it is not stated.
std::string fact_text(const std::vector<Particular>& facts, std::string_view name);

/// The record of this kind and name; null when there is none.
const Record* find_record(const Rig& rig, RecordKind kind, std::string_view name);
/// The last record of this kind that is of this thing: the file goes on and what it says later counts. Null
/// when there is none.
const Record* last_record_of(const Rig& rig, RecordKind kind, std::string_view of);

/// EA of a line: as stated, else modulus times metallic area. Nothing when neither is stated.
std::optional<Sourced<Force>> line_stiffness(const LineMaterial& material);

} // namespace sheerpole
