#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on joints say beside what the comparisons do.
enum class JointCheckPhrase : std::uint16_t {
  under_this_one,
};

constexpr PhraseSubject subject_of(JointCheckPhrase) {
  return PhraseSubject::joint_check;
}

std::string_view words(JointCheckPhrase phrase);

} // namespace sheerpole
