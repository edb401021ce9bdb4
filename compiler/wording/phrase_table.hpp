#pragma once

#include "model/remark.hpp"

#include <cstdint>
#include <string_view>

namespace sheerpole {

enum class JointPhrase : std::uint16_t;
enum class StrengthPhrase : std::uint16_t;
enum class StockPhrase : std::uint16_t;
enum class PullDirection;
enum class Distribution;
enum class UncertaintyPhrase : std::uint16_t;
enum class GeometryPhrase : std::uint16_t;
enum class TunePhrase : std::uint16_t;

std::string_view words(JointPhrase phrase);
std::string_view words(StrengthPhrase phrase);
std::string_view words(StockPhrase phrase);
std::string_view words(UncertaintyPhrase phrase);
std::string_view words(GeometryPhrase phrase);
std::string_view words(TunePhrase phrase);

/// The words of what results tell by a type.
std::string_view words(PullDirection direction);
std::string_view words(Distribution distribution);

/// The phrase of each subject by its number, with `{}` for each argument in turn or `{0}`, `{1}` for one by
/// its place. Each is a switch over the subject's enumeration, without a default: a phrase that has no
/// words does not compile.
std::string_view phrase_of(const Remark& remark);

} // namespace sheerpole
