#include "plugins/diagram/diagram.hpp"

#include "backend/diagram/rig_diagram.hpp"
#include "backend/diagram/stay_strips.hpp"
#include "backend/drawing/svg_writer.hpp"

#include <fmt/format.h>

namespace sheerpole {

BackendDescription DiagramBackend::describe() const {
  return {"diagram",
          "the rig in three views to one scale, and each stay as a strip of its parts from aloft to deck",
          {"rig-diagram.svg", "stay-strips.svg"}};
}

OutputBundle DiagramBackend::generate(const BackendRequest& request) const {
  OutputBundle bundle;
  bundle.files.push_back({"rig-diagram.svg", write_svg(rig_diagram(request.checked))});
  const std::vector<Drawing> sheets = stay_strips(request.checked);
  for (std::size_t i = 0; i < sheets.size(); ++i)
    bundle.files.push_back(
        {i == 0 ? "stay-strips.svg" : fmt::format("stay-strips-{}.svg", i + 1), write_svg(sheets[i])});
  return bundle;
}

} // namespace sheerpole
