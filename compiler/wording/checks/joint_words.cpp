#include "wording/checks/joint_phrases.hpp"

namespace sheerpole {

std::string_view words(JointCheckPhrase phrase) {
  using enum JointCheckPhrase;
  switch (phrase) {
  case under_this_one:
    return "under this one";
  }
  return {};
}

} // namespace sheerpole
