#include "diagnostics/catalogue.hpp"

namespace sheerpole {

namespace {

constexpr CatalogueEntry entries[] = {
    {"unreadable", Severity::error, "{found} can not be read here; expected is {expected}", "", "", "", ""},
    {"too-deep", Severity::error, "nested deeper than {limit} levels", "", "", "", ""},
    {"too-many-findings", Severity::note, "more than {count} findings in this file; the rest is not shown",
     "", "", "", ""},
    {"stray-backslash", Severity::error, "a backslash stands only before a quote or another backslash", "",
     "", "", ""},
    {"unit-behind-parenthesis", Severity::error, "{unit} stands behind a parenthesis", "", "", "", ""},
    {"place-needs-three-numbers", Severity::error, "a place has three numbers, not {count}", "", "", "",
     ""},
};

} // namespace

std::span<const CatalogueEntry> syntax_findings() {
  return entries;
}

} // namespace sheerpole
