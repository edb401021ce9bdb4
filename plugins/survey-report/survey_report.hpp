#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Back end `survey-report`: the whole rig for a surveyor or an insurer, as one HTML file and as a PDF:
/// what is up there, how each number is known, what was not seen, what was found.
class SurveyReport final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
