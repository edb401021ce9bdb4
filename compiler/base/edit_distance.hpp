#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Number of single-character inserts, deletes, replacements and neighbour swaps between two names
/// (optimal string alignment distance).
std::size_t edit_distance(std::string_view a, std::string_view b);

/// The candidate nearest to `name`, when it is near enough to be a likely slip (at most a third of the
/// letters, at least one). Ties go to the earliest candidate.
std::optional<std::string> nearest_name(std::string_view name, const std::vector<std::string>& candidates);

/// "; did you mean `jaw`?" where one of the candidates is near enough, else nothing.
std::string did_you_mean(std::string_view name, const std::vector<std::string>& candidates);

} // namespace sheerpole
