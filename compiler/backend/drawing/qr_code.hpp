#pragma once

#include "backend/drawing/drawing.hpp"

#include <cstddef>
#include <optional>
#include <string_view>

namespace sheerpole {

/// Modules of light that a code needs on every side: ISO/IEC 18004.
inline constexpr int quiet_modules = 4;

/// The text as a QR code (ISO/IEC 18004) of black squares, `side` millimetres wide with its quiet zone,
/// its corner at `at`. UTF-8; a text that is not of ASCII alone says so by an ECI. About a quarter of it
/// may be spoilt, less where the text is long: as much as keeps the modules at `least` millimetres. Nothing
/// when they would be smaller at any level.
std::optional<ModulesShape> qr_code(std::string_view text, PaperPoint at, double side, double least);

} // namespace sheerpole
