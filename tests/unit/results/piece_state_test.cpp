#include "model/piece_state.hpp"

#include "backend/paper_words.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace sheerpole::piece_state_test {
namespace {

using test::compiled;

/// One wire, bearing to bearing 11650 mm by its points. `source` is that of the points.
std::string rig_of(const std::string& in_stay, const std::string& readings, const std::string& more = "",
                   const std::string& source = "drawn") {
  return test::unfolded("language 1\n" + more +
                        "wire wire-6 {  construction: \"1x19\"  size: \"6 mm\"  }\n"
                        "points {  tang: (0, 0, 11_650) mm " +
                        source + "  stem: (0, 0, 0) mm " + source + "  }\nstay forestay {  " + in_stay +
                        "  line: wire-6  stack {  line  }  }\n" + readings);
}

std::string tape(const std::string& runs, const std::string& date = "2026-05-02") {
  return "reading of forestay { method: tape  runs: " + runs + "  date: " + date + " }\n";
}
std::string cord(const std::string& date) {
  return "reading of forestay { method: messenger  mark: \"red\"  date: " + date + " }\n";
}

const std::string path = "path: tang > stem";

struct Stood {
  PieceState state = PieceState::not_yet;
  bool draft = true;
  std::string line; ///< as papers print it
};

Stood stood(const std::string& text) {
  const Compilation rig = compiled(text);
  if (!rig.checked) {
    ADD_FAILURE() << text;
    return {};
  }
  const Piece& piece = rig.checked->derived().stays.at(0).pieces.at(0);
  return {rig.checked->state(piece), !rig.checked->draft_reasons(piece).empty(),
          state_line(*rig.checked, piece)};
}

TEST(PieceState, NotMeasuredIsWhatNobodyReadInPlace) {
  for (const std::string& in_stay : {path, std::string("pin-to-pin: 11_650 mm drawn"), std::string()}) {
    const Stood found = stood(rig_of(in_stay, ""));
    EXPECT_EQ(found.state, PieceState::not_measured) << in_stay;
    EXPECT_TRUE(found.draft) << in_stay;
    EXPECT_EQ(found.line, "NOT MEASURED: nothing was read in place; order by it and cut nothing");
  }
}

TEST(PieceState, ADrawingIsCutFromOnlyWhereThatIsStatedWithItsReason) {
  const std::string leave = "cut-from: drawing  cut-from-reason: \"new mast, built to the drawing\"";
  for (const std::string& text :
       {rig_of(path + "  " + leave, ""), rig_of(path, "", "boat \"Tern\" { " + leave + " }\n")}) {
    const Stood found = stood(text);
    EXPECT_EQ(found.state, PieceState::not_measured);
    EXPECT_FALSE(found.draft);
    EXPECT_EQ(found.line, "FROM DRAWING: not measured in place; new mast, built to the drawing");
  }
  // It stays a draft for any other reason.
  EXPECT_TRUE(stood(rig_of(path + "  " + leave, "", "", "assumed")).draft);
  // What was read in place stands above the drawing.
  EXPECT_EQ(stood(rig_of(path + "  " + leave, tape("11_648 mm"))).line,
            "MEASURED ONCE: by tape, 2026-05-02; measure again before you cut");
}

TEST(PieceState, OnceIsNotTwice) {
  for (const std::string& text :
       {rig_of("", tape("11_648 mm")), rig_of("", cord("2026-05-02")),
        rig_of("pin-to-pin: 11_650 mm measured", ""), rig_of(path, "", "", "measured"),
        // Runs and readings that lie further apart than routes-apart confirm nothing.
        rig_of("", tape("11_648 mm, 11_660 mm")),
        rig_of("", tape("11_648 mm") + tape("11_660 mm", "2026-04-02")),
        // A cord that is measured twice on the bench was hoisted once.
        rig_of("", "reading of forestay { method: messenger  cord-length: 11_640 mm, 11_641 mm }\n"),
        // Drawn points make a length plausible and do not confirm it.
        rig_of(path, tape("11_648 mm"))}) {
    const Stood found = stood(text);
    EXPECT_EQ(found.state, PieceState::measured_once) << text;
    EXPECT_FALSE(found.draft) << text;
  }
}

TEST(PieceState, ASecondRunOrASecondWayMakesItReady) {
  const std::vector<std::pair<std::string, std::string>> cases{
      {rig_of("", tape("11_648 mm, 11_650 mm")),
       "READY: measured by tape, 2026-05-02; confirmed by a second run to 2 mm"},
      {rig_of("", tape("11_648 mm") + tape("11_645 mm", "2026-04-02")),
       "READY: measured by tape, 2026-05-02; confirmed by tape, 2026-04-02, to 3 mm"},
      {rig_of("", cord("2026-05-02") + cord("2026-05-09")),
       "READY: measured by the cord, 2026-05-09; confirmed: the cord gave the same mark on 2026-05-02"},
      {rig_of("",
              tape("11_648 mm", "2026-05-09") +
                  "reading of forestay { method: messenger  cord-length: 11_644 mm  date: 2026-05-02 }\n"),
       "READY: measured by tape, 2026-05-09; confirmed by the cord, 2026-05-02, to 4 mm"},
      {rig_of("pin-to-pin: 11_650 mm measured", tape("11_648 mm")),
       "READY: measured by tape, 2026-05-02; confirmed by the stated length to 2 mm"},
      {rig_of(path, tape("11_648 mm"), "", "measured"),
       "READY: measured by tape, 2026-05-02; confirmed by measured points to 2 mm"},
      // The limit of the file decides.
      {rig_of("", tape("11_648 mm, 11_660 mm"), "limits { routes-apart: 15 mm }\n"),
       "READY: measured by tape, 2026-05-02; confirmed by a second run to 12 mm"},
  };
  for (const auto& [text, line] : cases) {
    const Stood found = stood(text);
    EXPECT_EQ(found.state, PieceState::ready) << text;
    EXPECT_FALSE(found.draft) << text;
    EXPECT_EQ(found.line, line);
  }
}

// What was read twice and is contradicted by another measurement is no more measured than what was read
// once; where a drawing says something else nothing is READY that does not say so.
TEST(PieceState, WaysThatDifferAreNotReady) {
  const std::string twice = tape("11_700 mm, 11_702 mm");
  const std::string measured = "pin-to-pin: 11_650 mm measured";
  const Stood against_measured = stood(rig_of(measured, twice));
  EXPECT_EQ(against_measured.state, PieceState::measured_once);
  EXPECT_EQ(against_measured.line, "WAYS DIFFER: by tape, 2026-05-02; the stated length gives 51 mm less. "
                                   "Measure again before you cut");
  const Stood against_drawn = stood(rig_of(path, twice));
  EXPECT_EQ(against_drawn.state, PieceState::ways_differ);
  EXPECT_EQ(against_drawn.line,
            "WAYS DIFFER: measured by tape, 2026-05-02; confirmed by a second run to 2 mm; "
            "its points give 51 mm less. Find out why before you cut");
  EXPECT_TRUE(stood(rig_of(path, twice, "", "assumed")).line.starts_with("READY: "))
      << "what is assumed is no witness";
  EXPECT_TRUE(stood(rig_of(path, twice, "limits { routes-apart: 60 mm }\n")).line.starts_with("READY: "));

  const Compilation two = compiled(rig_of(path, twice) + "stay inner {\n  " + measured +
                                   "\n  line: wire-6\n  stack {\n    line\n  }\n}\nreading of inner {\n"
                                   "  method: tape\n  runs: 11_700 mm, 11_702 mm\n  date: 2026-05-02\n}\n");
  ASSERT_TRUE(two.checked);
  EXPECT_EQ(states_of_pieces(*two.checked), "2 whose ways differ");
  const Piece& drawn = two.checked->derived().stays.at(0).pieces.at(0);
  const Piece& contradicted = two.checked->derived().stays.at(1).pieces.at(0);
  EXPECT_EQ(state_stamp(*two.checked, drawn), "WAYS DIFFER");
  EXPECT_FALSE(is_settled(*two.checked, drawn));
  EXPECT_TRUE(two.checked->held_by(drawn).empty()) << "a warning names it, a person decides";
  ASSERT_EQ(two.checked->held_by(contradicted).size(), 1u);
  EXPECT_EQ(two.checked->held_by(contradicted).front().reason, "two ways to its length differ");
}

TEST(PieceState, NotYetIsADraftOfWhatWasMeasured) {
  EXPECT_EQ(
      stood(rig_of("", tape("11_648 mm") + "reading of forestay { method: laser  runs: 11_670 mm }\n"))
          .state,
      PieceState::not_yet);
  const Stood once = stood(rig_of("", tape("11_648 mm"), "limits { second-measure: draft }\n"));
  EXPECT_EQ(once.state, PieceState::not_yet);
  EXPECT_TRUE(once.draft);
}

TEST(PieceState, SecondMeasureWarnsMakesADraftOrIsOff) {
  const auto warned = [](const std::string& limits) {
    return test::found(compiled(rig_of("", tape("11_648 mm"), limits)), "measured-once");
  };
  EXPECT_TRUE(warned(""));
  EXPECT_TRUE(warned("limits { second-measure: warn }\n"));
  EXPECT_TRUE(warned("limits { second-measure: draft }\n"));
  EXPECT_FALSE(warned("limits { second-measure: off }\n"));
  const Stood off = stood(rig_of("", tape("11_648 mm"), "limits { second-measure: off }\n"));
  EXPECT_EQ(off.state, PieceState::measured_once) << "a switched-off check measures nothing";
  EXPECT_FALSE(off.draft);
}

TEST(PieceState, TheStatesOfAllPiecesInOneLine) {
  const Compilation rig =
      compiled(rig_of("", tape("11_648 mm, 11_650 mm")) +
               "stay backstay {\n  pin-to-pin: 12 m drawn\n  line: wire-6\n  stack {\n    line\n  }\n}\n"
               "stay inner {\n  pin-to-pin: 9 m measured\n  line: wire-6\n  stack {\n    line\n  }\n}\n");
  EXPECT_EQ(states_of_pieces(*rig.checked), "1 ready, 1 measured once, 1 not measured");
}

} // namespace
} // namespace sheerpole::piece_state_test
