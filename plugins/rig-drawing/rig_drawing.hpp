#pragma once

#include "backend/backend.hpp"
#include "backend/page/paper.hpp"

#include <vector>

namespace sheerpole {

/// The rig as a drawing office would draw it: profile, view from astern of each mast and deck plan to one
/// scale in first-angle projection, with numbered stays and their table.
struct RigDrawing final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

/// The sheet; one without views when the file states no points of stays.
Drawing rig_drawing_sheet(const CheckedRig& checked);

/// The sheet in pieces at full size for a printer that takes no larger paper, in rows from above, each with
/// marks at which it is joined to its neighbours; empty when one page holds it. The paper lies on its long
/// side where that makes fewer.
std::vector<Drawing> tiles_of(const Drawing& sheet, const CheckedRig& checked, PaperSize paper);

} // namespace sheerpole
