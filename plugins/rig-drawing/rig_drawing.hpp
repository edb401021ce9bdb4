#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// The rig as a drawing office would draw it: profile, view from astern of each mast and deck plan to one
/// scale in first-angle projection, with numbered stays and their table.
struct RigDrawing final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

/// The sheet; one without views when the file states no points of stays.
Drawing rig_drawing_sheet(const CheckedRig& checked);

} // namespace sheerpole
