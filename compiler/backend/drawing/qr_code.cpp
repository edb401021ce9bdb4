#include "backend/drawing/qr_code.hpp"

#include <qrcodegen/qrcodegen.hpp>

#include <algorithm>
#include <cstdint>
#include <vector>

namespace sheerpole {

namespace {

using qrcodegen::QrCode;
using qrcodegen::QrSegment;

constexpr long utf_8 = 26; ///< the number of this encoding among the ECIs, ISO/IEC 18004

std::vector<QrSegment> segments(std::string_view text) {
  std::vector<QrSegment> all;
  const auto is_ascii = [](char sign) { return static_cast<unsigned char>(sign) < 0x80; };
  if (!std::all_of(text.begin(), text.end(), is_ascii))
    all.push_back(QrSegment::makeEci(utf_8));
  all.push_back(QrSegment::makeBytes(std::vector<std::uint8_t>(text.begin(), text.end())));
  return all;
}

/// Each run of black modules of a row as one rectangle.
void draw_row(const QrCode& code, int row, PaperPoint corner, double module, ShapeGroup& into) {
  const ShapeStyle black{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  const int size = code.getSize();
  for (int from = 0; from < size; ++from) {
    if (!code.getModule(from, row))
      continue;
    int to = from;
    while (to < size && code.getModule(to, row))
      ++to;
    into.add(RectangleShape{{corner.x + module * from, corner.y + module * row, corner.x + module * to,
                             corner.y + module * (row + 1)},
                            black,
                            ""});
    from = to;
  }
}

} // namespace

std::optional<ShapeGroup> qr_code(std::string_view text, PaperPoint at, double side, double least) {
  for (const QrCode::Ecc level : {QrCode::Ecc::QUARTILE, QrCode::Ecc::MEDIUM, QrCode::Ecc::LOW}) {
    try {
      const QrCode code = QrCode::encodeSegments(segments(text), level, QrCode::MIN_VERSION,
                                                 QrCode::MAX_VERSION, -1, false);
      const double module = side / (code.getSize() + 2 * quiet_modules);
      if (module < least)
        continue;
      ShapeGroup group;
      const PaperPoint corner{at.x + quiet_modules * module, at.y + quiet_modules * module};
      for (int row = 0; row < code.getSize(); ++row)
        draw_row(code, row, corner, module, group);
      return group;
    } catch (const qrcodegen::data_too_long&) {
      continue; // less of it can be mended, and more fits
    }
  }
  return std::nullopt;
}

} // namespace sheerpole
