#include "plugins/spool-plan/hatching.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

const ShapeStyle thin{0.15, 0.0, {}, {}};

/// Lines at 45 degrees; `rising` ones run up to the right.
void slanted(const PaperBox& box, double apart, bool rising, ShapeGroup& into) {
  const double height = box.height();
  for (double x = box.left - height + apart / 2; x < box.right; x += apart) {
    // From (x, bottom) up to (x + height, top), cut off at the sides of the box.
    const double from = std::max(x, box.left);
    const double to = std::min(x + height, box.right);
    if (to - from < 0.05)
      continue;
    const double low = box.bottom - (from - x);
    const double high = box.bottom - (to - x);
    if (rising)
      into.add(LineShape{{from, low}, {to, high}, thin, {}});
    else
      into.add(LineShape{{from, box.top + box.bottom - low}, {to, box.top + box.bottom - high}, thin, {}});
  }
}

} // namespace

void draw_pattern(const PaperBox& box, BarPattern pattern, ShapeGroup& into) {
  if (box.width() <= 0.0)
    return;
  switch (pattern) {
  case BarPattern::plain:
    break;
  case BarPattern::slant:
    slanted(box, 3.0, true, into);
    break;
  case BarPattern::upright:
    for (double x = box.left + 0.6; x < box.right; x += 1.2)
      into.add(LineShape{{x, box.top}, {x, box.bottom}, thin, {}});
    break;
  case BarPattern::crossed:
    slanted(box, 1.5, true, into);
    slanted(box, 1.5, false, into);
    break;
  }
  into.add(RectangleShape{box, {0.25, 0.0, {}, {}}, {}});
}

} // namespace sheerpole
