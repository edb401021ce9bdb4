#include "wording/print_phases.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>

namespace sheerpole::print_lengths_test {
namespace {

using namespace build;

// Hand sums: 5000 - 80 - 330 = 4590; 4590 + 60 = 4650; (395 - 330) / 2.54 = 25.6 turns either way.
TEST(PrintLengths, ShowsEverySumTermByTerm) {
  RigBuilder builder;
  Part toggle = fixed("toggle-12", mm(80));
  toggle.lower = end("wire-socket", {{"inserted", mm(60)}});
  Part bottle = adjuster("turnbuckle", "bottle-12", mm(265), mm(395));
  bottle.screw = Screw{parse_thread("1/2-20 UNF").value(), true, {}};
  bottle.engaged_at_longest = sourced(mm(14));
  bottle.place = at(40);
  const PartId upper = builder.add(toggle);
  const PartId lower = builder.add(bottle);
  builder.add(stay("aft-lower", mm(5000), builder.add(wire("wire-8", mm(8))),
                   {item(upper), line(), open(builder.rig, lower, 0.5)}));
  EXPECT_EQ(print_derived(builder.rig, calculate(builder.rig)),
            "stay aft-lower, pin-to-pin by stated\n"
            "  pin-to-pin = 5000 mm\n"
            "         5000.00  pin-to-pin as stated  [measured]\n"
            "  body = 4590 mm\n"
            "         5000.00  pin-to-pin  [measured]\n"
            "          -80.00  toggle-12  [maker]\n"
            "         -330.00  bottle-12, 50 % open  [drawn]\n"
            "  piece aft-lower of wire-8\n"
            "    cut = 4650 mm\n"
            "           4590.00  body  [computed]\n"
            "             60.00  inserted aloft  [maker]\n"
            "    end above: toggle-12\n"
            "    end below: bottle-12\n"
            "    missing: insertion depth of bottle-12; state `upper: wire-socket (inserted: … mm)` in "
            "bottle-12, from its maker or with a depth gauge\n"
            "  adjuster bottle-12 set to 330 mm: 65 mm to tighten, 65 mm to slacken; 2.54 mm a turn, 25.6 "
            "and 25.6 "
            "turns; 46.5 mm of thread engaged, at least 12.7 mm\n");
}

TEST(PrintLengths, ShowsXWithItsMark) {
  RigBuilder builder;
  Stay made = stay("shroud", builder.add(rope("hmpe-9", mm(9))),
                   {line(), item(builder.add(fixed("link", mm(44))))});
  Reading messenger;
  messenger.method = ReadingMethod::messenger;
  messenger.mark = "red whipping";
  made.readings = {messenger};
  builder.add(made);
  const std::string text = print_derived(builder.rig, calculate(builder.rig));
  EXPECT_NE(text.find("  body = X - 44 mm\n"), std::string::npos) << text;
  EXPECT_NE(text.find("X  mark on the messenger: red whipping\n"), std::string::npos) << text;
}

} // namespace
} // namespace sheerpole::print_lengths_test
