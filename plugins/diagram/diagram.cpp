#include "plugins/diagram/diagram.hpp"

#include "backend/diagram/rig_diagram.hpp"
#include "backend/diagram/stay_strips.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "wording/papers/diagram_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

/// The longest page of a PDF: 14 400 units of 1/72 in (ISO 32000-1, annex C), with some to spare.
constexpr double longest_page = 5000.0; // mm

/// A sheet that no page of a PDF can hold stays SVG alone.
void add_paper(const std::string& name, std::vector<Drawing> sheets, OutputBundle& bundle) {
  const bool fits = std::all_of(sheets.begin(), sheets.end(), [](const Drawing& sheet) {
    return sheet.width <= longest_page && sheet.height <= longest_page;
  });
  const std::string title = sheets.front().title;
  if (fits)
    bundle.papers.push_back({name, title, std::move(sheets)});
}

} // namespace

BackendDescription DiagramBackend::describe() const {
  return {.name = "diagram",
          .summary = say(DiagramPhrase::rig_three_views_one_scale),
          .outputs = {"rig-diagram.svg", "stay-strips.svg"},
          .papers = {"rig-diagram.pdf", "stay-strips.pdf"}};
}

OutputBundle DiagramBackend::generate(const BackendRequest& request) const {
  OutputBundle bundle;
  Drawing views = rig_diagram(request.checked);
  bundle.files.push_back({"rig-diagram.svg", write_svg(views)});
  // On sheets of their own size, whatever the other papers are printed on: smaller they can not be read.
  add_paper("rig-diagram.pdf", {views}, bundle);
  std::vector<Drawing> sheets = stay_strips(request.checked);
  for (std::size_t i = 0; i < sheets.size(); ++i)
    bundle.files.push_back(
        {i == 0 ? "stay-strips.svg" : fmt::format("stay-strips-{}.svg", i + 1), write_svg(sheets[i])});
  add_paper("stay-strips.pdf", std::move(sheets), bundle);
  return bundle;
}

} // namespace sheerpole
