#include "unit/calculate/compiled_rig.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>

#include <map>

namespace sheerpole::joints_test {
namespace {

using test::compiled;

/// A stay from a tang over a toggle to a wire and down to a chainplate.
std::string rig_with(const std::string& toggle_upper, const std::string& toggle_lower,
                     const std::string& plate, const std::string& between = "") {
  return "language 1\n"
         "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
         "terminal eye-62 {\n  length: 62 mm\n  lower: wire-socket (construction: \"1x19\", size: \"6 "
         "mm\", "
         "inserted: 50 mm)\n}\n"
         "toggle toggle-60 {\n  length: 60 mm\n  upper: " +
         toggle_upper + "\n  lower: " + toggle_lower +
         "\n}\n"
         "chainplate plate-a {\n  upper: " +
         plate +
         "\n}\n"
         "bush bush-10 {\n  upper: eye (hole: 10.2 mm)\n}\n"
         "stay shroud {\n  pin-to-pin: 10 m\n  line: wire-6\n  stack {\n    eye-62\n    line\n    eye-62\n"
         "    toggle-60\n" +
         between + "    plate-a\n  }\n}\n";
}

const char* const more_of_jaw = "outside: 26 mm, grip: 30 mm, split-pin: \"3.2 mm\"";
const std::string whole_jaw =
    std::string("jaw (gap: 14 mm, depth: 25 mm, pin: \"12 mm\", ") + more_of_jaw + ")";
const char* const whole_plate = "eye (hole: 12.3 mm, thickness: 12 mm, edge: 20 mm)";

/// The results at the last joint by name.
std::map<std::string, JointResult> last_joint(const std::string& text) {
  const Compilation rig = compiled(text);
  std::map<std::string, JointResult> result;
  if (!rig.derived)
    return result;
  for (const JointCheck& check : rig.derived->stays[0].joints.back().checks)
    result[std::string(slug_of(check.finding))] = check.result;
  return result;
}

TEST(Joints, OfAJawAndAPlateAreAllCompared) {
  const auto results = last_joint(rig_with("stud (thread: \"M12\", hand: right)", whole_jaw, whole_plate));
  EXPECT_EQ(results.size(), 10u);
  for (const auto& [slug, result] : results)
    EXPECT_EQ(result, JointResult::pass) << slug;
}

// A dimension that is not stated turns just what is worked out from it to not checked.
TEST(Joints, AMissingDimensionIsNotAPass) {
  const auto check = [](const std::string& jaw, const char* plate,
                        std::initializer_list<const char*> unknown) {
    const auto results = last_joint(rig_with("stud (thread: \"M12\", hand: right)", jaw, plate));
    EXPECT_EQ(results.size(), 10u);
    for (const auto& [slug, result] : results) {
      bool expected = false;
      for (const char* name : unknown)
        expected = expected || slug == name;
      EXPECT_EQ(result, expected ? JointResult::not_checked : JointResult::pass) << jaw << plate << slug;
    }
  };
  const std::string more = more_of_jaw;
  check("jaw (gap: 14 mm, depth: 25 mm, " + more + ")", whole_plate,
        {"pin-too-big", "pin-loose", "split-pin-small"});
  check("jaw (depth: 25 mm, pin: \"12 mm\", " + more + ")", whole_plate,
        {"jaw-too-narrow", "jaw-too-wide"});
  check("jaw (gap: 14 mm, pin: \"12 mm\", " + more + ")", whole_plate, {"jaw-too-shallow"});
  const std::string three = "jaw (gap: 14 mm, depth: 25 mm, pin: \"12 mm\", ";
  check(three + "grip: 30 mm, split-pin: \"4 mm\")", whole_plate, {"pin-too-short"});
  check(three + "outside: 26 mm, split-pin: \"4 mm\")", whole_plate, {"pin-too-short"});
  check(three + "outside: 26 mm, grip: 30 mm)", whole_plate, {"split-pin-small"});
  check(whole_jaw, "eye (thickness: 12 mm, edge: 20 mm)", {"pin-too-big", "pin-loose", "hole-near-edge"});
  check(whole_jaw, "eye (hole: 12.3 mm, edge: 20 mm)", {"jaw-too-narrow", "jaw-too-wide"});
  check(whole_jaw, "eye (hole: 12.3 mm, thickness: 12 mm)", {"jaw-too-shallow", "hole-near-edge"});
}

// 12 mm less 9 mm is 3 mm, whatever the last bits of the two numbers say: at most 3 mm is kept.
TEST(Joints, APlayThatIsJustTheLimitPasses) {
  const std::string jaw = "jaw (gap: 12 mm, depth: 25 mm, pin: \"12 mm\")";
  const auto of_plate = [&](const char* thickness) {
    return last_joint(rig_with("stud (thread: \"M12\", hand: right)", jaw,
                               std::string("eye (hole: 12.3 mm, edge: 20 mm, thickness: ") + thickness +
                                   ")"))["jaw-too-wide"];
  };
  EXPECT_EQ(of_plate("9 mm"), JointResult::pass);
  EXPECT_EQ(of_plate("8.99 mm"), JointResult::finding);
  EXPECT_EQ(of_plate("12 mm"), JointResult::pass);
}

// A plate thinner than 5 mm may play by 60 % of its thickness: 3.75 mm and 2.25 mm fill a jaw of 6 mm.
TEST(Joints, AThinPlateMayPlayByAShareOfItself) {
  const auto of_plate = [](const std::string& thickness, const std::string& gap) {
    return last_joint(rig_with(
        "stud (thread: \"M12\", hand: right)", "jaw (gap: " + gap + ", depth: 25 mm, pin: \"12 mm\")",
        "eye (hole: 12.3 mm, edge: 20 mm, thickness: " + thickness + ")"))["jaw-too-wide"];
  };
  EXPECT_EQ(of_plate("3.75 mm", "6 mm"), JointResult::pass);
  EXPECT_EQ(of_plate("3.74 mm", "6 mm"), JointResult::finding);
  EXPECT_EQ(of_plate("5 mm", "8 mm"), JointResult::pass);
}

TEST(Joints, ABushFillsTheHole) {
  const std::string loose = "jaw (gap: 14 mm, depth: 25 mm, pin: \"10 mm\")";
  EXPECT_EQ(last_joint(rig_with("stud (thread: \"M12\", hand: right)", loose, whole_plate))["pin-loose"],
            JointResult::finding);
  EXPECT_EQ(last_joint(rig_with("stud (thread: \"M12\", hand: right)", loose, whole_plate,
                                "    bush-10\n"))["pin-loose"],
            JointResult::pass);
}

// A part is used the way round in which its ends fit: here the jaw is stated as the upper end.
TEST(Joints, APartMayBeTurned) {
  EXPECT_EQ(
      last_joint(rig_with(whole_jaw, "stud (thread: \"M12\", hand: right)", whole_plate))["pin-too-big"],
      JointResult::pass);
}

// Common practice, no source: 12 mm and 1/2 in look alike and are not; 16 mm below and 14 mm above are two
// joints, each with its own pin, and nothing is wrong with them.
TEST(Joints, SizesOfTwoSystemsAreTold) {
  const Compilation rig = compiled(rig_with("stud (thread: \"M12\", hand: right)", whole_jaw,
                                            "eye (hole: 13.0 mm, thickness: 12 mm, edge: 20 mm)"));
  const JointCheck* loose = nullptr;
  for (const JointCheck& check : rig.derived->stays[0].joints.back().checks)
    if (check.finding == JointFinding::pin_loose)
      loose = &check;
  ASSERT_NE(loose, nullptr);
  EXPECT_EQ(loose->result, JointResult::finding);
  EXPECT_THAT(say(*rig.rig, loose->words), testing::HasSubstr("that of a pin of 1/2 in"));
  ASSERT_TRUE(loose->play);
  EXPECT_NEAR(loose->play->millimetres(), 1.0, 1e-9);
}

// 5/16 in is 7.94 mm: no terminal for 8 mm wire holds it for certain.
TEST(Joints, WireSizesAreComparedAsNames) {
  const Compilation rig = compiled(
      "language 1\n"
      "wire wire-a {\n  construction: \"1x19\"\n  size: \"5/16 in\"\n}\n"
      "terminal eye-8 {\n  length: 62 mm\n  lower: wire-socket (construction: \"1x19\", size: \"8 mm\", "
      "inserted: 50 mm)\n}\n"
      "stay shroud {\n  pin-to-pin: 10 m\n  line: wire-a\n  stack {\n    eye-8\n    line\n    eye-8\n  "
      "}\n}\n");
  EXPECT_TRUE(test::found(rig, "wire-size-differs"));
  EXPECT_FALSE(test::found(rig, "wire-construction-differs"));
}

// Geometry: exactly as long, as wide, as thick as it has to be is enough; a bar has to be longer than its
// slot is wide. ISO 1234: 3.2 mm through a pin of 12 mm.
TEST(Joints, AtTheEdge) {
  const auto jaw = [](const std::string& more) {
    return last_joint(rig_with("stud (thread: \"M12\", hand: right)",
                               "jaw (gap: 14 mm, pin: \"12 mm\", " + more + ")", whole_plate));
  };
  EXPECT_EQ(jaw("outside: 26 mm, grip: 26 mm")["pin-too-short"], JointResult::pass);
  EXPECT_EQ(jaw("split-pin: \"3.2 mm\"")["split-pin-small"], JointResult::pass);
  EXPECT_EQ(jaw("split-pin: \"3 mm\"")["split-pin-small"], JointResult::finding);
  EXPECT_EQ(jaw("split-pin: \"1/8 in\"")["split-pin-small"], JointResult::finding) << "3.175 mm";
}

/// The comparisons between a tang and the terminal under it.
std::map<std::string, JointResult> aloft(const std::string& tang, const std::string& terminal) {
  return last_joint("language 1\nwire wire-3 {\n  construction: \"1x19\"\n  size: \"3 mm\"\n}\n"
                    "hook part-a {\n  length: 30 mm\n  lower: " +
                    tang + "\n}\nterminal part-b {\n  length: 20 mm\n  upper: " + terminal +
                    "\n}\nstay shroud {\n  pin-to-pin: 5 m\n  line: wire-3\n  stack {\n    line\n"
                    "    part-a\n    part-b\n  }\n}\n");
}

TEST(Joints, OfATeeAndItsSlot) {
  const std::string slot = "slot (width: 7 mm, length: 17 mm)";
  auto results = aloft(slot, "tee (neck: 7 mm, head: 17 mm)");
  EXPECT_EQ(results["tee-too-big"], JointResult::pass);
  EXPECT_EQ(results["tee-pulls-through"], JointResult::pass);
  EXPECT_EQ(results["ends-do-not-join"], JointResult::pass);
  results = aloft(slot, "tee (neck: 6 mm)");
  EXPECT_EQ(results["tee-too-big"], JointResult::not_checked);
  EXPECT_EQ(results["tee-pulls-through"], JointResult::not_checked);
  results = aloft("slot (width: 7 mm)", "tee (neck: 6 mm, head: 15 mm)");
  EXPECT_EQ(results["tee-too-big"], JointResult::not_checked) << "the length of the slot";
  EXPECT_EQ(results["tee-pulls-through"], JointResult::pass);
}

TEST(Joints, OfAHookAndAnEye) {
  EXPECT_EQ(aloft("hook (opening: 12 mm)", "eye (thickness: 12 mm)")["hook-too-small"], JointResult::pass);
  EXPECT_EQ(aloft("hook (opening: 12 mm)", "eye (hole: 12 mm)")["hook-too-small"],
            JointResult::not_checked);
  EXPECT_EQ(aloft("hook", "eye (thickness: 12 mm)")["hook-too-small"], JointResult::not_checked);
}

// Common practice, no source: what may be joined some way is not called impossible.
TEST(Joints, OfEndsThatMayBeJoinedSomeWay) {
  for (const char* other : {"jaw", "holes", "rope-seat", "slot"}) {
    auto results = aloft("hook", other);
    EXPECT_EQ(results.count("ends-do-not-join"), 0u) << other;
    EXPECT_EQ(results["ends"], JointResult::not_checked) << other;
  }
}

} // namespace
} // namespace sheerpole::joints_test
