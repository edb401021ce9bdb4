#include "driver/help_page.hpp"

#include <gtest/gtest.h>

namespace sheerpole::help_page_test {
namespace {

// Lines of the library's page as it makes them, and what becomes of them in 60 columns; by hand.
TEST(HelpPage, FitsItsColumnsAndKeepsWhatIsSaidInItsOwn) {
  EXPECT_EQ(
      fitted_help("Options:\n"
                  "  --set NAME=VALUE            try another value for this run; may be given again\n",
                  60),
      "Options:\n"
      "  --set NAME=VALUE            try another value for this\n"
      "                              run; may be given again\n");
}

TEST(HelpPage, DropsListsFromNamesAndPutsWhatIsSaidBesideThem) {
  EXPECT_EQ(fitted_help("  --form FORM:{text,lines,json,sarif}\n"
                        "                              how findings are shown\n",
                        80),
            "  --form FORM                 how findings are shown\n");
  // A name that is too long for its column stays on a line of its own.
  EXPECT_EQ(fitted_help("  --between-masts-and-more LENGTH\n"
                        "                              from mast to mast\n",
                        80),
            "  --between-masts-and-more LENGTH\n"
            "                              from mast to mast\n");
}

TEST(HelpPage, BreaksAParagraphAndLeavesShortLinesAlone) {
  EXPECT_EQ(fitted_help("\nread a rig file\n\nWork aloft and on loaded rigging can kill: replace one stay "
                        "at a time\n",
                        60),
            "\nread a rig file\n\nWork aloft and on loaded rigging can kill: replace one stay\n"
            "at a time\n");
}

} // namespace
} // namespace sheerpole::help_page_test
