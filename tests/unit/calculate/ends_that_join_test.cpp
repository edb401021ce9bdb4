#include "calculate/joints/joint.hpp"
#include "wording/say.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>

namespace sheerpole::ends_that_join_test {
namespace {

using namespace build;

TEST(EndsThatJoin, NoPairBothJoinsAndNeverJoins) {
  const char* types[] = {"jaw",  "eye",         "stud", "socket", "rope-seat",
                         "hook", "wire-socket", "tee",  "slot",   "holes"};
  for (const char* one : types)
    for (const char* other : types) {
      EXPECT_FALSE(ends_mate(end(one), end(other)) && ends_never_join(end(one), end(other)))
          << one << " " << other;
      EXPECT_EQ(ends_never_join(end(one), end(other)), ends_never_join(end(other), end(one)));
    }
}

TEST(EndsThatJoin, AnEndThatIsNotStatedMayBeAnything) {
  EXPECT_FALSE(ends_never_join(End{}, end("eye")));
  EXPECT_FALSE(ends_mate(End{}, end("eye")));
}

Part with_ends(std::string name, const char* upper, const char* lower) {
  Part part = fixed(std::move(name), mm(60));
  part.upper = end(upper);
  part.lower = end(lower);
  return part;
}

/// The findings of this kind in a stay from a tang over these parts to a chainplate.
std::vector<std::string> never_joined(const std::vector<Part>& parts, const char* plate_end,
                                      std::string_view slug = "ends-do-not-join") {
  RigBuilder builder;
  const MaterialId wire_6 = builder.add(wire("wire-6", mm(6)));
  std::vector<StackItem> stack{line()};
  for (const Part& part : parts)
    stack.push_back(item(builder.add(part)));
  Part plate = fitting("plate-a");
  plate.upper = end(plate_end);
  stack.push_back(item(builder.add(plate)));
  builder.add(stay("shroud", mm(10000), wire_6, std::move(stack)));
  std::vector<std::string> found;
  const Derived derived = calculate(builder.rig);
  for (const Joint& joint : derived.stays[0].joints)
    for (const JointCheck& check : joint.checks)
      if (slug_of(check.finding) == slug && check.result == JointResult::finding)
        found.push_back(say(builder.rig, joint.name));
  return found;
}

// Whichever way round: the toggle is turned until its jaw is at the plate, which leaves its eye for the
// link.
TEST(EndsThatJoin, PartsAreTurnedUntilTheFewestAreApart) {
  const Part terminal = with_ends("terminal", "eye", "wire-socket");
  const Part toggle = with_ends("toggle", "eye", "jaw");
  EXPECT_TRUE(never_joined({terminal, with_ends("link", "jaw", "jaw")}, "eye").empty());
  EXPECT_EQ(never_joined({terminal, toggle}, "eye").size(), 1u) << "eye to eye somewhere, either way round";
  EXPECT_TRUE(never_joined({terminal, toggle}, "jaw").size() == 0u) << "turned: jaw to eye, eye to jaw";
  EXPECT_EQ(never_joined({terminal}, "eye"), (std::vector<std::string>{"terminal to plate-a"}))
      << "a terminal is not turned with its back to the wire";
}

// Common practice, no source: a small jaw may go inside a large one, so that it is a warning of its own.
TEST(EndsThatJoin, TwoJawsAreAFindingOfTheirOwn) {
  const Part terminal = with_ends("terminal", "eye", "wire-socket");
  EXPECT_TRUE(never_joined({terminal, with_ends("toggle", "jaw", "jaw")}, "jaw").empty());
  EXPECT_EQ(never_joined({terminal, with_ends("toggle", "jaw", "jaw")}, "jaw", "jaws-meet"),
            (std::vector<std::string>{"toggle to plate-a"}));
}

TEST(EndsThatJoin, AShackleOrAPinInTheJointMayJoinThem) {
  Part bow = with_ends("bow", "eye", "eye");
  const Part terminal = with_ends("terminal", "eye", "wire-socket");
  EXPECT_EQ(never_joined({terminal, bow}, "jaw").size(), 1u);
  bow.kind = PartKind::shackle;
  EXPECT_TRUE(never_joined({terminal, bow}, "jaw").empty());
  Part pin;
  pin.kind = PartKind::pin;
  pin.name = "pin-12";
  pin.role = Part::Role::worn;
  EXPECT_TRUE(never_joined({terminal, pin}, "eye").empty());
}

} // namespace
} // namespace sheerpole::ends_that_join_test
