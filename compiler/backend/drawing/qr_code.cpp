#include "backend/drawing/qr_code.hpp"

#include "backend/drawing/qr_mask.hpp"

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

/// ISO/IEC 18004, 6.3.1 (from memory).
int modules_across(int version) {
  return 17 + 4 * version;
}

QrLevel level_of(QrCode::Ecc level) {
  return level == QrCode::Ecc::QUARTILE ? QrLevel::quartile
         : level == QrCode::Ecc::MEDIUM ? QrLevel::medium
                                        : QrLevel::low;
}

} // namespace

std::optional<ModulesShape> qr_code(std::string_view text, PaperPoint at, double side, double least) {
  const std::vector<QrSegment> parts = segments(text);
  // The largest whose modules are not too small: what does not fit into it need not be encoded to see that.
  int most = QrCode::MAX_VERSION;
  while (most > QrCode::MIN_VERSION && side / (modules_across(most) + 2 * quiet_modules) < least)
    --most;
  for (const QrCode::Ecc level : {QrCode::Ecc::QUARTILE, QrCode::Ecc::MEDIUM, QrCode::Ecc::LOW}) {
    try {
      // Under one mask, since the library takes ten times as long to find the best of them.
      const QrCode code = QrCode::encodeSegments(parts, level, QrCode::MIN_VERSION, most, 0, false);
      const double module = side / (code.getSize() + 2 * quiet_modules);
      if (module < least)
        continue;
      ModulesShape modules;
      modules.across = code.getSize();
      modules.black = best_masked(modules.across, level_of(level),
                                  [&](int row, int column) { return code.getModule(column, row); });
      modules.corner = {at.x + quiet_modules * module, at.y + quiet_modules * module};
      modules.module = module;
      return modules;
    } catch (const qrcodegen::data_too_long&) {
      continue; // less of it can be mended, and more fits
    }
  }
  return std::nullopt;
}

} // namespace sheerpole
