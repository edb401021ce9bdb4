#pragma once

#include <string_view>

namespace sheerpole {

/// What people print on: ISO 216 A4, ANSI/ASME Y14.1 letter.
enum class PaperSize { a4, letter };

constexpr std::string_view name_of(PaperSize size) {
  return size == PaperSize::a4 ? "a4" : "letter";
}

/// Millimetres, upright.
struct PaperExtent {
  double width = 210.0;
  double height = 297.0;
};

constexpr PaperExtent paper_of(PaperSize size) {
  return size == PaperSize::a4 ? PaperExtent{210.0, 297.0} : PaperExtent{215.9, 279.4};
}

/// Clear of ink on every side: what office printers leave white, and a hole punch on the left.
inline constexpr double page_margin = 15.0;

} // namespace sheerpole
