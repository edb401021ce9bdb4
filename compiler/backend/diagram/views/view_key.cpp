#include "backend/diagram/views/view_key.hpp"

#include "backend/diagram/line_style.hpp"
#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/scale_bar.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

bool uses(const Rig& rig, LineMaterial::Kind kind) {
  return std::any_of(rig.stays.begin(), rig.stays.end(),
                     [&](const Stay& stay) { return rig[stay.material].kind == kind; });
}

constexpr double key_row_height = 4.2;
constexpr LineMaterial::Kind rare_kinds[] = {LineMaterial::Kind::rod, LineMaterial::Kind::chain};

} // namespace

double view_key_height(const Rig& rig) {
  double height = 45.0;
  for (const auto kind : rare_kinds)
    if (uses(rig, kind))
      height += key_row_height;
  return height;
}

ShapeGroup view_key(const Rig& rig, double scale, PaperPoint at) {
  constexpr double sample = 18.0;
  ShapeGroup key{"key", "Key to the lines", {}, {}};
  double y = at.y + 2.0;
  const auto words = [&](const char* text) {
    key.add(TextShape{{at.x + sample + 3.0, y + 0.35 * plain_text_size},
                      text,
                      plain_text_size,
                      TextAnchor::start,
                      false,
                      {}});
    y += key_row_height;
  };
  const auto row = [&](const ShapeStyle& style, const char* text) {
    key.add(LineShape{{at.x, y}, {at.x + sample, y}, style, {}});
    words(text);
  };
  row(line_style(LineMaterial::Kind::wire), "wire");
  row(line_style(LineMaterial::Kind::rope), "rope");
  for (const auto kind : rare_kinds)
    if (uses(rig, kind))
      row(line_style(kind), name_of(kind).data());
  row(spreader_style(), "spreader");
  row(reference_line_style(), "waterline or centreline, no part of the rig");
  key.add(point_mark({at.x + sample / 2, y}, {}));
  words("point, as named in the rig file");

  const double millimetres_per_metre = 1000.0 / scale;
  key.add(TextShape{{at.x, y + 3.4},
                    fmt::format("Scale 1:{}", format_number(scale)),
                    plain_text_size,
                    TextAnchor::start,
                    true,
                    {}});
  key.add(scale_bar(ScaleBarUnit::metres, millimetres_per_metre, 70.0, {at.x, y + 5.5}));
  key.add(scale_bar(ScaleBarUnit::feet, millimetres_per_metre, 70.0, {at.x, y + 12.5}));
  return key;
}

} // namespace sheerpole
