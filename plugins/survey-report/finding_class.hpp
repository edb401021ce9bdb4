#pragma once

#include "backend/backend.hpp"

#include <array>
#include <string_view>

namespace sheerpole {

/// The four classes in which surveyors write down what they find (common practice, no source).
enum class FindingClass { now, before_sailing, within_a_year, note };

inline constexpr std::array<FindingClass, 4> finding_classes{
    FindingClass::now, FindingClass::before_sailing, FindingClass::within_a_year, FindingClass::note};

/// "Now", "Before sailing", "Within a year", "To be noted".
std::string_view name_of(FindingClass finding_class);

/// Where a finding is put before a person has looked: a note is noted; a warning is for before sailing, but
/// for those that the table here puts elsewhere. Whoever signs the report puts it where it belongs.
FindingClass class_of(const Diagnostic& finding);

/// The slugs that the table moves, each with its class.
struct ClassRow {
  std::string_view slug;
  FindingClass finding_class;
};
const std::vector<ClassRow>& class_rows();

} // namespace sheerpole
