#include "plugins/cut-list/cut_list.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <regex>
#include <string>
#include <vector>

namespace sheerpole::cut_list_text_test {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string text_of(const SampleRig& sample) {
  return CutList().generate({sample.checked()}).files.at(0).bytes;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    lines.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

/// A draft: the contraction aloft rests on an assumption.
SampleRig draft_sloop() {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).cut.terms[3].provenance.source_class = SourceClass::assumed;
  sample.piece(port).cut.terms[3].provenance.assumptions = {"contraction of splice long-bury"};
  return sample;
}

// Feet and inches worked apart: 11642.0 / 25.4 = 458.346 in = 38 ft 2.346, nearest sixteenth 3/8; 11382.0
// / 25.4 = 448.110 = 37 ft 4.110, nearest 1/8; 12997.6 / 25.4 = 511.717 = 42 ft 7.717, nearest 11/16.
TEST(CutListText, IsThisText) {
  EXPECT_EQ(
      text_of(draft_sloop()),
      R"(CUT LIST   Pellimoor                                                                           DRAFT
====================================================================================================

****************************************************************************************************
DRAFT: cut nothing that waits here, for 1 reason
  * contraction of splice long-bury is assumed
      holds back  cap-shroud.port
      to do       make a test splice on this rope; or, as it is heat-set, state contraction-rule:
                  equals-first-creep
****************************************************************************************************

Before you begin
  - These lengths follow from the rig file and nothing else. Nobody has judged whether the rig is
    strong enough.
  - Work aloft and work on loaded rigging can maim and kill. Take the load off before you undo
    anything.
  - Replace one stay at a time, and hold the mast in its place by something else meanwhile.
  - Dry-fit every piece on the boat before you cut it. What is cut off cannot be put back.
  - Local codes and a licensed professional rigger come before this list.

How to read it
  - Pin-to-pin runs from pin centre to pin centre, body from bearing to bearing; cut is the piece to
    cut off.
  - Each row is rounded to 0.1 mm, halves away from zero. Each total is the sum of the rows above it
    as printed. Feet and inches are the total rounded to the nearest 1/16 in.

Summary
no.     off        cut mm  cut ft in           draft  piece; line, size
---  ------  ------------  ------------------  -----  ----------------------------------------------
  1       1       NOT YET                      DRAFT  cap-shroud.port; hmpe-9, 9 mm

====================================================================================================
1.  Cap shroud, port side (left when looking forward)                                          DRAFT

   number off    1: cap-shroud.port
   CUT           NOT YET, 1 reason; see DRAFT below
   state         NOT YET: this is a DRAFT, cut nothing
   line          hmpe-9: 12-strand HMPE heat-set, rope
   size          9 mm
   path          cap-tang > plate-a
   length from   the stated length
   upper end     thimble-9, splice long-bury
   lower end     deadeye-9, splice long-bury
   take-up       lashing-4 set to 160.0 mm
                 to tighten 100.0 mm, to slacken 100.0 mm
   DRAFT since   contraction of splice long-bury is assumed

   the sum                                          mm   how it is known
   --------------------------------------  -----------   -------------------------------------------
   pin-to-pin as stated                       +11642.0   drawn, sail plan 12
   = pin-to-pin                                11642.0   = 38' 2 3/8"
   thimble-9                                     -16.0   maker, sheet 4
   deadeye-9                                     -38.0   maker
   lashing-4, gap 160 mm                        -160.0   drawn
   lash-block                                    -46.0   measured, written 1 13/16 in
   = body                                      11382.0   = 37' 4 1/8"
   eye allowance aloft                          +108.0   12 d x 9 mm; practice
   bury aloft                                   +648.0   72 d x 9 mm; practice
   contraction aloft                             +51.8   8 % of 648 mm; assumed
   eye allowance below                          +108.0   12 d x 9 mm; practice
   bury below                                   +648.0   72 d x 9 mm; practice
   contraction below                             +51.8   8 % of 648 mm; measured
   = CUT                                       NOT YET   the sum of the rows above; not to be cut to

   marks         none while it is a DRAFT

====================================================================================================
Lines, before spare
    about 13.0 m     rope hmpe-9, 9 mm: 1 piece, 1 of them DRAFT; to order by, not to cut to
  Each is the sum of the printed cut lengths, without spare, loss at the saw or whole spools.
----------------------------------------------------------------------------------------------------
Cut list, Pellimoor, revision not stated, report date not stated, rig 40f7ec6a
)");
}

TEST(CutListText, IsNoDraftWithoutReason) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  EXPECT_THAT(text_of(sample), Not(HasSubstr("DRAFT")));
}

TEST(CutListText, GroupsOneReasonOverItsPieces) {
  SampleRig sample;
  for (const Side side : {Side::port, Side::starboard})
    sample.piece(sample.add_cap_shroud(side)).cut.terms[3].provenance.assumptions = {
        "contraction of demo-eye"};
  EXPECT_THAT(text_of(sample), HasSubstr("  * contraction of demo-eye is assumed\n"
                                         "      holds back  cap-shroud.port, cap-shroud.starboard\n"));
}

TEST(CutListText, KeepsPortAndStarboardApartWithoutAStatedTolerance) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard);
  const std::string text = text_of(sample);
  EXPECT_THAT(text, HasSubstr("1.  Cap shroud, port side (left when looking forward)\n"));
  EXPECT_THAT(text, HasSubstr("2.  Cap shroud, starboard side (right when looking forward)\n"));
  EXPECT_THAT(text, Not(HasSubstr("2 off")));
}

TEST(CutListText, MakesTwoOffOfAnEqualPair) {
  SampleRig sample;
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard);
  const std::string text = text_of(sample);
  EXPECT_THAT(text,
              HasSubstr("   number off    2 off: cap-shroud.port, cap-shroud.starboard (equal within the "
                        "stated 1 mm)\n"
                        "   CUT           12997.6 mm = 42' 7 11/16\" (each)\n"));
  EXPECT_THAT(text, HasSubstr("  1       2       12997.6  42' 7 11/16\"               cap-shroud.port, "
                              "cap-shroud.starboard; hmpe-9,\n" +
                              std::string(54, ' ') + "9 mm\n"));
  EXPECT_THAT(text, Not(HasSubstr("the sum, port")));
  // Two of 12997.6 mm.
  EXPECT_THAT(text, HasSubstr("25995.2 mm  26.00 m"));
}

TEST(CutListText, PrintsBothTotalsOfAPairThatDiffersWithinTheTolerance) {
  SampleRig sample;
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard, 11642.4);
  const std::string text = text_of(sample);
  EXPECT_THAT(text, HasSubstr("   CUT           port: 12997.6 mm = 42' 7 11/16\"\n"
                              "                 starboard: 12998.0 mm = 42' 7 3/4\"\n"));
  EXPECT_THAT(text, HasSubstr("   the sum, port "));
  EXPECT_THAT(text, HasSubstr("   the sum, starboard "));
  EXPECT_THAT(text, HasSubstr("  1  1 of 2       12997.6"));
  EXPECT_THAT(text, HasSubstr("  1  1 of 2       12998.0"));
  EXPECT_THAT(text, HasSubstr("25995.6 mm  26.00 m"));
}

TEST(CutListText, ShowsTheUnknownAsXPlusSomething) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  const std::string text = text_of(sample);
  EXPECT_THAT(text,
              HasSubstr("   X(forestay)                                           measured, mark on the "
                        "messenger: red\n"));
  EXPECT_THAT(text, HasSubstr("   hook offset                                   -20.0   measured\n"));
  EXPECT_THAT(text, HasSubstr("   = CUT                            X(forestay) + 32.0"
                              "   = X(forestay) + 1 1/4\"\n"));
  EXPECT_THAT(text, HasSubstr("X(STAY) is the length of that stay, which is not known as a number."));
  // In the summary, where stays stand together, as in the block.
  EXPECT_THAT(text, HasSubstr("  1       1  X(forestay) + 32.0 mm\n"));
  EXPECT_THAT(text, HasSubstr("   CUT           X(forestay) + 32.0 mm = X(forestay) + 1 1/4\"\n"));
  EXPECT_THAT(text, HasSubstr("wire wire-6, 6 mm: no piece of known length\n"
                              "                  left out: forestay, length X(forestay)\n"));
}

TEST(CutListText, GivesNoCutForAnIncompletePiece) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).missing = {
      {SampleRig::saying("contraction of splice long-bury"), SampleRig::saying("make a test splice"), {}}};
  const std::string text = text_of(sample);
  EXPECT_THAT(
      text,
      HasSubstr("  1       1       NOT YET                      DRAFT  cap-shroud.port; hmpe-9, 9 mm\n"));
  EXPECT_THAT(text, HasSubstr("   CUT           NOT YET, 1 reason; see DRAFT below\n"));
  EXPECT_THAT(
      text,
      HasSubstr(
          "   = CUT                                       NOT YET   the rows above are INCOMPLETE\n"));
  EXPECT_THAT(text, HasSubstr("   DRAFT since   contraction of splice long-bury is missing\n"));
  EXPECT_THAT(text, HasSubstr("left out: cap-shroud.port, length incomplete\n"));
}

TEST(CutListText, SaysTakeUpInTurnsAndThread) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  TakeUp& adjuster = sample.derived.stays[0].adjusters[0];
  adjuster.travel_per_turn = Length::millimetres(2.54); // 1/2-20 UNF pair, ASME B1.1
  adjuster.engaged = Length::millimetres(20.0);
  adjuster.least_engagement = Length::millimetres(12.7);
  EXPECT_THAT(
      text_of(sample),
      HasSubstr("   take-up       lashing-4 set to 160.0 mm\n"
                "                 to tighten 100.0 mm = 39.4 turns, to slacken 100.0 mm = 39.4 turns\n"
                "                 thread engaged 20.0 mm each stud (one diameter is 12.7 mm)\n"));
}

TEST(CutListText, ShowsTheOtherWayToTheLength) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.derived.stays[0].other_routes.push_back({LengthRoute::path, Length::millimetres(11641.7),
                                                  Length::millimetres(0.3),
                                                  SampleRig::known(SourceClass::computed, "from points")});
  EXPECT_THAT(text_of(sample), HasSubstr("   length from   the stated length\n                 the points "
                                         "of its path, not used, gives 11641.7 mm; "
                                         "the one used differs by +0.3 mm\n"
                                         "                 (computed, from points)\n"));
}

TEST(CutListText, SaysThatARigWithoutStaysHasNothingToCut) {
  EXPECT_THAT(text_of(SampleRig()),
              HasSubstr("There is nothing to cut: no stay of this rig has a line.\n"));
}

TEST(CutListText, NumbersThePiecesOfOneStay) {
  SampleRig sample;
  Piece& piece = sample.piece(sample.add_cap_shroud(Side::port));
  piece.number = 2;
  piece.of = 3;
  EXPECT_THAT(text_of(sample), HasSubstr("1.  Cap shroud, piece 2 of 3 from aloft, port side"));
}

TEST(CutListText, AddsUpInEverySum) {
  SampleRig sample = draft_sloop();
  sample.add_cap_shroud(Side::starboard, 11642.37);
  sample.add_unknown_stay(20.25);
  const std::regex row(R"(^   (.{38}) +([+-]\d+\.\d)   .*$)");
  const std::regex total(R"(^   = .*? +(?:X\(\S+\) ([+-]) )?(\d+\.\d)   = .*$)");
  long sum = 0;
  int totals = 0;
  for (const std::string& line : lines_of(text_of(sample))) {
    std::smatch found;
    const auto tenths = [&](std::string number) {
      number.erase(number.find('.'), 1);
      return std::stol(number);
    };
    if (line.find("the sum") != std::string::npos) {
      sum = 0;
    } else if (std::regex_match(line, found, total)) {
      EXPECT_EQ(tenths(found[2]) * (found[1] == "-" ? -1 : 1), sum) << line;
      ++totals;
    } else if (std::regex_match(line, found, row)) {
      sum += tenths(found[2]);
    }
  }
  EXPECT_EQ(totals, 8); // the cut of the draft is no number
}

TEST(CutListText, StaysWithinAHundredColumns) {
  SampleRig sample = draft_sloop();
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  sample.add_cap_shroud(Side::starboard, 11642.4);
  sample.add_unknown_stay(20.0);
  sample.rig.materials[0].title =
      "A rope with a very long title that goes on for a good while, as titles may";
  for (const std::string& line : lines_of(text_of(sample))) {
    EXPECT_LE(screen_columns(line), 100u) << line;
    EXPECT_FALSE(line.ends_with(' ')) << line;
  }
}

TEST(CutListText, GivesNoVerdict) {
  SampleRig sample = draft_sloop();
  sample.add_unknown_stay(20.0);
  const std::regex verdict(R"(\b(safe|approved|certified)\b)", std::regex::icase);
  for (const OutputFile& file : CutList().generate({sample.checked()}).files)
    EXPECT_FALSE(std::regex_search(file.bytes, verdict)) << file.name;
}

TEST(CutListText, KeepsTheUsualCautions) {
  const std::string text = text_of(draft_sloop());
  for (const char* caution : {"Work aloft", "loaded rigging", "one stay at a time", "Dry-fit",
                              "Local codes", "professional rigger"})
    EXPECT_THAT(text, HasSubstr(caution));
}

TEST(CutList, GivesTheFilesThatItNames) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const OutputBundle bundle = CutList().generate({sample.checked()});
  std::vector<std::string> names;
  for (const OutputFile& file : bundle.files)
    names.push_back(file.name);
  EXPECT_EQ(names, CutList().describe().outputs);
}

// 11382.0 + 1615.6 - 6.6 = 12991.0.
TEST(CutListText, AddsTheCutUpInThreeNumbersAndSaysHowWellItIsKnown) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  Piece& piece = sample.piece(port);
  piece.cut.terms.push_back(
      SampleRig::term(TermKind::stretch, -6.6, SampleRig::known(SourceClass::computed)));
  piece.bench.dry_fit = MarkPlace{false, Length::millimetres(11479.08)};
  piece.not_counted = {SampleRig::saying("creep"), SampleRig::saying("bedding")};
  Uncertainty known;
  known.expanded = Length::millimetres(7.3);
  known.drawn_low = Length::millimetres(-6.8);
  known.drawn_high = Length::millimetres(6.9);
  known.worst_low = Length::millimetres(-13.3);
  known.worst_high = Length::millimetres(13.2);
  known.reaches = 0.5;
  sample.derived.stays[0].uncertainty = known;
  EXPECT_THAT(text_of(sample), HasSubstr(R"(
   dry fit    11479.0 mm bearing to bearing, eyes formed and nothing buried
   by hand
   body                                          11382.0
   what the ends use                             +1615.6
   what the line does                               -6.6
   = CUT                                         12991.0
   known to   -6.8 / +6.9 mm (95 % of the draws), at worst -13.3 / +13.2 mm; see the proof sheet
              the adjuster reaches in 50 000 of 100 000 draws, before creep and cold
   not in it  creep; bedding
)"));
  // A range without what has no tolerance would make a stay of which little is stated look the best known.
  sample.derived.stays[0].uncertainty->without_bound = {SampleRig::saying("the reading"),
                                                        SampleRig::saying("length of toggle-12")};
  EXPECT_THAT(text_of(sample), HasSubstr(R"(
   accuracy   unknown: no tolerance given for the reading and one more. The rest is known to -6.8 /
              +6.9 mm (95 % of the draws), at worst -13.3 / +13.2 mm; see the proof sheet
)"));
  sample.derived.stays[0].uncertainty.reset();
  EXPECT_THAT(text_of(sample), HasSubstr("\n   accuracy   unknown: no tolerances given\n"));
}

} // namespace
} // namespace sheerpole::cut_list_text_test
