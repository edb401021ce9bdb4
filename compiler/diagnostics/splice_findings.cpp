#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array<CatalogueEntry, 0> entries{};

} // namespace

std::span<const CatalogueEntry> splice_findings() {
  return entries;
}

} // namespace sheerpole
