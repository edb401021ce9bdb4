#include "calculate/change/rig_change.hpp"

#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>

namespace sheerpole::rig_change_test {
namespace {

Compilation compiled(const std::string& boat, std::vector<std::string> settings = {}) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

/// The boat with one text of her file in the place of another, everywhere.
Compilation compiled_with(const std::string& boat, const std::string& from, const std::string& to) {
  class Reader final : public FileReader {
  public:
    Reader(std::string boat, std::string from, std::string to)
        : boat_(std::move(boat)), from_(std::move(from)), to_(std::move(to)) {}
    Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
      auto text = files_.read(path, limit);
      if (!text || path != boat_)
        return text;
      std::string changed = text.value();
      for (std::size_t at = 0; (at = changed.find(from_, at)) != std::string::npos; at += to_.size())
        changed.replace(at, from_.size(), to_);
      return changed;
    }
    std::string real_path(const std::string& path) override { return files_.real_path(path); }

  private:
    DiskFileReader files_;
    std::string boat_, from_, to_;
  };
  const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig";
  Reader reader(path, from, to);
  return compile(path, reader, {});
}

RigChange change_between(const Compilation& was, const Compilation& is) {
  return compare_rigs(*was.rig, *was.derived, *is.rig, *is.derived);
}

const StayChange* find(const RigChange& change, const std::string& stay) {
  const auto found = std::find_if(change.stays.begin(), change.stays.end(),
                                  [&](const StayChange& one) { return one.stay == stay; });
  return found == change.stays.end() ? nullptr : &*found;
}

const PieceChange& piece_of(const RigChange& change, const std::string& stay) {
  const StayChange* found = find(change, stay);
  if (found == nullptr || found->pieces.empty())
    throw std::runtime_error(stay + " is not in the change");
  return found->pieces.front();
}

// Against pin-to-pin lengths computed outside the project; tests/reference/what-if.tsv says how.
TEST(RigChange, HoldsTheStaysOfTheWhatIfTablesAndNoOthers) {
  std::map<std::pair<std::string, std::string>, std::map<std::string, std::pair<double, double>>> cases;
  for (const auto& cells : reference_rows("what-if", 5))
    cases[{cells[0], cells[1]}][cells[2]] = {std::stod(cells[3]), std::stod(cells[4])};
  ASSERT_GE(cases.size(), 2u);
  for (const auto& [what, rows] : cases) {
    SCOPED_TRACE(what.first + " " + what.second);
    const Compilation was = compiled(what.first);
    const Compilation is = compiled(what.first, {what.second});
    const RigChange change = change_between(was, is);
    std::map<std::string, int> met;
    for (const StayChange& stay : change.stays) {
      const std::string base = stay.stay.substr(0, stay.stay.find('.'));
      ASSERT_TRUE(rows.contains(base)) << stay.stay << " does not change";
      ++met[base];
      EXPECT_NEAR(stay.pin_to_pin.was.millimetres(), rows.at(base).first, 0.05 + 1e-6) << stay.stay;
      EXPECT_NEAR(stay.pin_to_pin.is.millimetres(), rows.at(base).second, 0.05 + 1e-6) << stay.stay;
      EXPECT_FALSE(stay.why.empty()) << stay.stay;
    }
    EXPECT_EQ(met.size(), rows.size());
  }
}

// Caps from lashing to turnbuckle: body 11 382 becomes 11 330, the ropes are 52 mm too long and can be
// re-spliced; the old adjuster had -100/+100 mm, the new one has -55/+55 mm. Worked outside the project.
TEST(RigChange, SaysThatPellimoorsCapsCanBeResplicedShorter) {
  const Compilation was = compiled("pellimoor");
  const Compilation is = compiled("pellimoor-turnbuckles");
  const RigChange change = change_between(was, is);
  ASSERT_EQ(change.stays.size(), 2u);
  for (const char* stay : {"cap-shroud.port", "cap-shroud.starboard"}) {
    const PieceChange& piece = piece_of(change, stay);
    EXPECT_EQ(piece.fate, LineFate::remade) << say(*is.rig, piece.why);
    EXPECT_NEAR(piece.too_long.value().millimetres(), 52.0, 0.05);
    EXPECT_THAT(say(*is.rig, piece.why),
                ::testing::HasSubstr("52 mm too long; can be re-spliced shorter below"));
    const StayChange* of_stay = find(change, stay);
    ASSERT_TRUE(of_stay->range_was && of_stay->range_is);
    EXPECT_NEAR(of_stay->range_was->to_tighten.millimetres(), 100.0, 0.05);
    EXPECT_NEAR(of_stay->range_was->to_slacken.millimetres(), 100.0, 0.05);
    EXPECT_NEAR(of_stay->range_is->to_tighten.millimetres(), 55.0, 0.05);
    EXPECT_NEAR(of_stay->range_is->to_slacken.millimetres(), 55.0, 0.05);
  }
  EXPECT_TRUE(change.lines.empty()) << "no rope has to be ordered";
  const auto count_of = [&](const std::string& part) {
    const auto found = std::find_if(change.parts.begin(), change.parts.end(),
                                    [&](const PartCount& one) { return one.part == part; });
    return found == change.parts.end() ? 0 : found->is - found->was;
  };
  EXPECT_EQ(count_of("deadeye-38"), -2);
  EXPECT_EQ(count_of("lashing-260"), -2);
}

// The other way round the ropes are 52 mm too short, and the rope that went into the old ends is gone.
TEST(RigChange, AndBackTheyAreTooShort) {
  const RigChange change = change_between(compiled("pellimoor-turnbuckles"), compiled("pellimoor"));
  const PieceChange& piece = piece_of(change, "cap-shroud.port");
  EXPECT_NEAR(piece.too_long.value().millimetres(), -52.0, 0.05);
  EXPECT_EQ(piece.fate, LineFate::replaced);
  ASSERT_EQ(change.lines.size(), 1u);
  EXPECT_EQ(change.lines.front().pieces, 2);
  EXPECT_NEAR(change.lines.front().cut.millimetres(), 2 * piece.cut.is.millimetres(), 0.01);
}

TEST(RigChange, OfARigAndItselfIsEmpty) {
  for (const char* boat : {"pellimoor", "grisolde", "oddnys-wager", "smidgeon"}) {
    const RigChange change = change_between(compiled(boat), compiled(boat));
    EXPECT_TRUE(change.empty()) << boat;
    EXPECT_TRUE(change.parts.empty()) << boat;
  }
}

// 25 mm of packing: the wire stays hang on, with their screws let out by as much; the sums say by how much.
TEST(RigChange, AWireHangsOnWhereItsScrewReaches) {
  const RigChange change =
      change_between(compiled("grisolde"), compiled("grisolde", {"step-packing=25 mm"}));
  const PieceChange& piece = piece_of(change, "forward-lower.port");
  EXPECT_EQ(piece.fate, LineFate::hangs);
  EXPECT_NEAR(piece.too_long.value().millimetres(), -23.5, 0.1);
}

// A hole-plate is pinned in a hole. By its row, shortest 60 mm and 10 mm from hole to hole, hole 8 is 130
// mm and hole 6 is 110 mm: a wire that is 20 mm too long for hole 8 hangs in hole 6.
TEST(RigChange, AnAdjusterWithHolesIsPinnedInAHole) {
  const Compilation was = compiled("smidgeon");
  const Compilation is = compiled_with("smidgeon", "hole-plate-12 (hole: 6)", "hole-plate-12 (hole: 8)");
  const RigChange change = change_between(was, is);
  const PieceChange& piece = piece_of(change, "upper-shroud.port");
  EXPECT_EQ(piece.fate, LineFate::hangs);
  EXPECT_EQ(say(*is.rig, piece.why),
            "20 mm too long; pin hole-plate-12 in hole 6 (110 mm), which leaves 50 mm "
            "to tighten and 60 mm to slacken");
}

// Holes 10 mm apart: 1 mm or 4 mm of another clevis lie between two. The nearest is said with what is left.
TEST(RigChange, BetweenTwoHolesTheNearestIsSaidWithWhatIsLeft) {
  const Compilation was = compiled("smidgeon");
  const Compilation is = compiled("smidgeon", {"clevis-20.length=24 mm"});
  const RigChange change = change_between(was, is);
  const PieceChange& piece = piece_of(change, "upper-shroud.port");
  EXPECT_EQ(piece.fate, LineFate::hangs);
  EXPECT_EQ(
      say(*is.rig, piece.why),
      "4 mm too long; pin hole-plate-12 in hole 6 (110 mm), the nearest: the stay is 4 mm too long in it, "
      "which leaves 50 mm to tighten and 60 mm to slacken");
}

// A DRAFT was never to be cut to: the old file does not say how long the piece is that hangs there. What is
// on record is known all the same, and a piece that is no DRAFT is taken as the file says.
TEST(RigChange, TakesNoDraftForAPieceThatHangs) {
  const Compilation was = compiled("smidgeon");
  const Compilation is = compiled("smidgeon", {"clevis-20.length=24 mm"});
  const auto fate = [&](const IsDraft& was_draft) {
    const RigChange change = compare_rigs(*was.rig, *was.derived, *is.rig, *is.derived, was_draft);
    return piece_of(change, "upper-shroud.port");
  };
  EXPECT_EQ(fate([](const Piece&) { return false; }).fate, LineFate::hangs);
  const PieceChange draft = fate([](const Piece& piece) { return piece.name == "upper-shroud.port"; });
  EXPECT_EQ(draft.fate, LineFate::not_checked);
  EXPECT_THAT(say(*is.rig, draft.why), ::testing::HasSubstr("the old cut is a DRAFT"));
  EXPECT_NEAR(draft.body.difference().millimetres(), -4.0, 1e-6) << "the numbers are said all the same";
}

// What hangs there is of the old rope: of another size, construction or grade it cannot be made into the
// new one, whatever the file calls it.
TEST(RigChange, ARopeOfAnotherSizeIsAnotherRope) {
  const Compilation was = compiled("pellimoor");
  for (const auto& [set, why] :
       {std::pair("hmpe-9.size=\"10 mm\"", "hmpe-9 of 10 mm in place of 9 mm"),
        std::pair("hmpe-9.construction=\"8-strand HMPE\"", "hmpe-9 made as 8-strand HMPE in place of")}) {
    const Compilation is = compiled("pellimoor", {set});
    const RigChange change = change_between(was, is);
    const PieceChange& piece = piece_of(change, "cap-shroud.port");
    EXPECT_EQ(piece.fate, LineFate::replaced) << set;
    EXPECT_THAT(say(*is.rig, piece.why), ::testing::HasSubstr(why));
    EXPECT_FALSE(change.lines.empty()) << "a new rope has to be ordered";
  }
}

/// Every property that is told apart, "subject, property", of a stay that changes or of what moves no
/// length.
std::vector<std::string> told(const RigChange& change) {
  std::vector<std::string> all;
  for (const StayChange& stay : change.stays)
    for (const ChangedInput& input : stay.why)
      all.push_back(say(input.subject) + ", " + say(input.property));
  for (const ChangedInput& input : change.without_move)
    all.push_back(say(input.subject) + ", " + say(input.property));
  return all;
}

TEST(RigChange, TellsApartEveryPropertyThatIsStated) {
  const auto of = [](const std::string& boat, const std::string& set) {
    return told(change_between(compiled(boat), compiled(boat, {set})));
  };
  EXPECT_THAT(of("pellimoor", "hmpe-9.construction=\"8-strand HMPE\""),
              ::testing::Contains("hmpe-9, construction"));
  EXPECT_THAT(of("grisolde", "wire-three-eighths.grade=\"duplex\""),
              ::testing::Contains("wire-three-eighths, grade"));
  EXPECT_THAT(of("pellimoor", "cap-shroud.duty=removable"), ::testing::Contains("cap-shroud.port, duty"));
  EXPECT_THAT(of("pellimoor-turnbuckles", "turnbuckle-280.screw=single"),
              ::testing::Contains("turnbuckle-280, screw"));
  EXPECT_THAT(of("pellimoor-turnbuckles", "turnbuckle-280.engaged-at-longest=14 mm"),
              ::testing::Contains("turnbuckle-280, engaged-at-longest"));
}

// A break load moves no length.
TEST(RigChange, TellsApartWhatMovesNoLength) {
  const RigChange change =
      change_between(compiled("pellimoor"), compiled("pellimoor", {"hmpe-9.break-load=80 kN"}));
  EXPECT_TRUE(change.stays.empty());
  ASSERT_EQ(change.without_move.size(), 1u);
  EXPECT_EQ(say(change.without_move.front().subject), "hmpe-9");
  EXPECT_EQ(change.without_move.front().was, "92 kN");
  EXPECT_EQ(change.without_move.front().is, "80 kN");
}

/// A shroud of 5 m by its points, measured or not.
std::string measured_shroud(const std::string& height, const std::string& reading) {
  return test::unfolded("language 1\n"
                        "wire wire-6 {  construction: \"1x19\"  size: \"6 mm\"  }\n"
                        "points {  tang: (0, 0, " +
                        height +
                        ") mm drawn  plate: (0, 0, 0) mm drawn  }\n"
                        "stay shroud {  path: tang > plate  line: wire-6  stack { line }  }\n" +
                        reading);
}

// A tang that goes up by 19 mm takes the upper end of a plumb shroud with it: 19 mm, by hand.
TEST(RigChange, AReadingOlderThanTheChangeIsToBeTakenAgain) {
  const std::string read =
      "reading of shroud { method: tape  runs: 5_002 mm, 5_003 mm  date: 2026-05-02 }\n";
  const std::string mark = "reading of shroud { method: messenger  mark: \"red\"  date: 2026-05-02 }\n";
  for (const std::string& reading : {read, mark}) {
    const RigChange change = change_between(test::compiled(measured_shroud("5_000", reading)),
                                            test::compiled(measured_shroud("5_019", reading)));
    EXPECT_TRUE(change.stays.empty());
    EXPECT_FALSE(change.empty());
    ASSERT_EQ(change.outdated.size(), 1u);
    EXPECT_EQ(change.outdated[0].stay, "shroud");
    EXPECT_EQ(change.outdated[0].measured, "2026-05-02");
    EXPECT_FALSE(change.outdated[0].why.empty());
    EXPECT_TRUE(change.without_move.empty()) << "a place that moves a measured stay moves a length";
    EXPECT_NEAR(change.outdated[0].expected.millimetres(), 19.0, 1e-9);
  }
  // Measured again since, and moved without having been measured: nothing is outdated.
  const std::string again =
      "reading of shroud { method: tape  runs: 5_021 mm, 5_022 mm  date: 2026-06-02 }\n";
  EXPECT_TRUE(change_between(test::compiled(measured_shroud("5_000", read)),
                             test::compiled(measured_shroud("5_019", read + again)))
                  .outdated.empty());
  EXPECT_TRUE(change_between(test::compiled(measured_shroud("5_000", "")),
                             test::compiled(measured_shroud("5_019", "")))
                  .outdated.empty());
}

} // namespace
} // namespace sheerpole::rig_change_test
