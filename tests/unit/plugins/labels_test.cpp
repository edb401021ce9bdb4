#include "plugins/labels/labels.hpp"

#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::labels_test {
namespace {

using testing::HasSubstr;

/// Every text but the foot of the page lies inside one label, clear of the lines to cut along.
void expect_inside_labels(const std::vector<Drawing>& pages) {
  expect_well_set(pages);
  for (const Drawing& page : pages)
    for (const LabelBox& text : set_boxes(page.content)) {
      if (text.box.top > page_margin + labels_below * label_height_on_sheet)
        continue;
      const double column = std::floor((text.box.left - page_margin) / label_width);
      const double row = std::floor((text.box.top - page_margin) / label_height_on_sheet);
      EXPECT_GE(text.box.left, page_margin + column * label_width + 1.0) << text.text;
      EXPECT_LE(text.box.right, page_margin + (column + 1.0) * label_width - 1.0) << text.text;
      EXPECT_GE(text.box.top, page_margin + row * label_height_on_sheet + 1.0) << text.text;
      EXPECT_LE(text.box.bottom, page_margin + (row + 1.0) * label_height_on_sheet - 1.0) << text.text;
    }
}

class LabelSheets : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, LabelSheets,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

TEST_P(LabelSheets, HoldTwoLabelsForEachPieceOnBothSheets) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  std::size_t pieces = 0;
  for (const DerivedStay& stay : boat.checked->derived().stays)
    pieces += stay.pieces.size();
  const auto labels = piece_labels(*boat.checked);
  EXPECT_EQ(labels.size(), 2 * pieces);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
    const auto pages = label_pages(labels, "A boat", "A boat, rig c86b17f0", size);
    EXPECT_EQ(pages.size(), (labels.size() + 11) / 12);
    expect_inside_labels(pages);
  }
}

TEST(Labels, SayWhatTheFileStatesAndLeaveALineForTheRest) {
  const Compilation boat = test::compiled(
      "language 1\nboat \"Tern\" { }\nrope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n"
      "  batch: \"spool 4\"\n}\nsplice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
      "thimble ring {\n  length: 30 mm\n}\n"
      "stay cap {\n  sides: port, starboard\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  made: "
      "2026-11-20\n"
      "  made-by: \"north shed\"\n  job: \"2026-114\"\n"
      "  stack {\n    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto labels = piece_labels(*boat.checked);
  ASSERT_EQ(labels.size(), 4u);
  EXPECT_EQ(labels[0].stay, "cap");
  EXPECT_EQ(labels[0].side, Side::port);
  EXPECT_EQ(labels[3].side, Side::starboard);
  EXPECT_EQ(labels[0].end, "ALOFT");
  EXPECT_EQ(labels[1].end, "BELOW");
  EXPECT_EQ(labels[0].to, "ring"); // the file names nothing beyond it
  // 10 000 less two rings of 30; twice 648 buried, 108 round the eye and 8 % of 648 that the bury takes up.
  EXPECT_EQ(labels[0].length, "cut 11\u202f556 mm, body 9940 mm");
  EXPECT_EQ(labels[0].state, "MEASURED ONCE");
  EXPECT_EQ(labels[0].made, "2026-11-20");
  EXPECT_EQ(labels[0].made_by, "north shed");
  EXPECT_EQ(labels[0].job, "2026-114");
  EXPECT_EQ(labels[0].batch, "spool 4");
  EXPECT_EQ(labels[0].code, "Tern, cap.port, cut 11556 mm, rev not stated, rig " + boat.checked->digest());
  const std::string html = Labels().generate({*boat.checked}).files.front().bytes;
  EXPECT_THAT(html, HasSubstr(">made: 2026-11-20<"));
  EXPECT_THAT(html, HasSubstr(">batch: spool 4<"));
}

// The neighbour at each end, so that nobody hangs a stay upside down or on the other plate.
TEST(Labels, NameWhatEachEndIsMadeFastTo) {
  const Compilation boat = test::example_with("pellimoor", "");
  ASSERT_TRUE(boat.checked);
  std::string ends;
  for (const PieceLabel& label : piece_labels(*boat.checked))
    ends += label.stay + " " + label.end + " " + label.to + "\n";
  EXPECT_THAT(ends, HasSubstr("cap-shroud ALOFT to the cap shroud tang, port: thimble-16\n"));
  EXPECT_THAT(ends, HasSubstr("cap-shroud BELOW to the chainplate A, fore hole, starboard: deadeye-38\n"));
}

// An eye that sits on others goes to a place on the boat, not "to the eye of" the stay that the label is
// of.
TEST(Labels, SayWhereAnEyeOfAGangSits) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  std::string ends;
  for (const PieceLabel& label : piece_labels(*boat.checked))
    ends += label.stay + " " + label.end + " " + label.to + "\n";
  EXPECT_THAT(ends, HasSubstr("shroud-1 ALOFT to the hounds, eye 2 from below, port: hounds-eye\n"));
  EXPECT_THAT(ends, HasSubstr("shroud-3 ALOFT to the hounds, eye 6 from below, port: hounds-eye\n"));
}

TEST(Labels, TheCodeOfADraftHoldsNoCut) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  for (const PieceLabel& label : piece_labels(*boat.checked))
    EXPECT_EQ(label.code.find("cut NOT YET") != std::string::npos, label.length.empty()) << label.code;
}

TEST(Labels, HoldNoLengthThatMayStillChange) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  for (const PieceLabel& label : piece_labels(*boat.checked)) {
    const bool rope = label.line.starts_with("hmpe"); // rests on a splice that nobody has tested
    EXPECT_EQ(label.length.empty(), rope) << label.stay;
  }
}

TEST(Labels, HoldNamesOfManyAlphabetsAndOfAnyLength) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  auto labels = piece_labels(*boat.checked);
  EXPECT_EQ(labels.size(), 160u);
  for (PieceLabel& label : labels) {
    label.batch = "Charge 波の上の長い名前 mit einem Namen, den niemand auf ein Schild schreibt";
    label.made_by = std::string(300, 'M');
  }
  labels.front().stay += std::string(2000, 'W');
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_inside_labels(
        label_pages(labels, boat.checked->rig().boat.title, identity_words(*boat.checked), size));
}

// Labels of several stays lie on one sheet, and each stay has its own X.
TEST(Labels, SayOfWhichStayTheXIs) {
  const Compilation boat = test::example_with("quillwort", "limits {\n  second-measure: off\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto labels = piece_labels(*boat.checked);
  ASSERT_EQ(labels.size(), 10u);
  // The worked case of docs/cords.md: X + 39 1/2 in, body X - 24 in.
  EXPECT_EQ(labels[0].length, "cut X(cap-shroud.port) + 39 1/2\", body X(cap-shroud.port) - 24\"");
  EXPECT_EQ(labels[2].length,
            "cut X(cap-shroud.starboard) + 39 1/2\", body X(cap-shroud.starboard) - 24\"");
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_inside_labels(label_pages(labels, "Quillwort", "Quillwort, rig c86b17f0", size));
}

} // namespace
} // namespace sheerpole::labels_test
