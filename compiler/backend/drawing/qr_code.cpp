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

ModulesShape modules_of(const QrCode& code) {
  ModulesShape modules;
  modules.across = code.getSize();
  for (int row = 0; row < modules.across; ++row)
    for (int column = 0; column < modules.across; ++column)
      modules.black.push_back(code.getModule(column, row));
  return modules;
}

} // namespace

std::optional<ModulesShape> qr_code(std::string_view text, PaperPoint at, double side, double least) {
  const std::vector<QrSegment> parts = segments(text);
  for (const QrCode::Ecc level : {QrCode::Ecc::QUARTILE, QrCode::Ecc::MEDIUM, QrCode::Ecc::LOW}) {
    const auto with_mask = [&](int mask) {
      return QrCode::encodeSegments(parts, level, QrCode::MIN_VERSION, QrCode::MAX_VERSION, mask, false);
    };
    try {
      // How large it becomes does not depend on its mask, and the best of the eight takes most of the work.
      const double module = side / (with_mask(0).getSize() + 2 * quiet_modules);
      if (module < least)
        continue;
      ModulesShape modules = modules_of(with_mask(-1));
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
