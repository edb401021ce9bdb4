#include "backend/diagram/views/scale_bar.hpp"

#include "backend/diagram/sheet.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

namespace sheerpole {

ShapeGroup scale_bar(ScaleBarUnit unit, double millimetres_per_metre, double longest, PaperPoint at) {
  const bool metric = unit == ScaleBarUnit::metres;
  const double one =
      millimetres_per_metre * (metric ? 1.0 : 0.3048); // the foot is exact by definition (1959)
  // 1, 2, 5, 10 …: begin far below what any sheet needs and take the last that fits.
  double total = 1e-3;
  int fields = 5;
  for (double power = 1e-3; power < 1e9; power *= 10)
    for (const double step : {1.0, 2.0, 5.0})
      if (step * power * one <= longest) {
        total = step * power;
        fields = step == 2.0 ? 4 : 5;
      }
  const double field = total * one / fields;
  const char* symbol = metric ? "m" : "ft";
  ShapeGroup bar{metric ? "scale-bar-metres" : "scale-bar-feet",
                 fmt::format("Scale bar of {} {}", format_number(total), metric ? "metres" : "feet"),
                 {},
                 {}};
  for (int i = 0; i < fields; ++i)
    bar.add(RectangleShape{{at.x + i * field, at.y, at.x + (i + 1) * field, at.y + 1.5},
                           {0.15, 0.0, {}, i % 2 == 0 ? 0.0 : 1.0},
                           {}});
  const double base = at.y + 1.5 + 1.1 * small_text_size;
  bar.add(TextShape{{at.x, base}, "0", small_text_size, TextAnchor::start, false, {}});
  bar.add(TextShape{{at.x + total * one, base},
                    fmt::format("{} {}", format_number(total), symbol),
                    small_text_size,
                    TextAnchor::middle,
                    false,
                    {}});
  return bar;
}

} // namespace sheerpole
