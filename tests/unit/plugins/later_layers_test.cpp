// No paper shows a length of a later layer beside an earlier day. Rigs with layers at random, dated or not,
// are built with every back end, and the papers are read.
#include "backend/paper_identity.hpp"
#include "plugins/labels/labels.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/paper_text.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <string>

namespace sheerpole::later_layers_test {
namespace {

constexpr std::array<const char*, 3> names{"ordered", "made", "fitted"};

struct RandomLayer {
  bool there = false;
  bool of_forestay = false; ///< else of the backstay
  std::string date;         ///< may be empty
};

std::string a_day() {
  return fmt::format("2026-{:02}-{:02}", *rc::gen::inRange(1, 7), *rc::gen::inRange(1, 29));
}
std::string a_day_or_none() {
  return *rc::gen::arbitrary<bool>() ? a_day() : "";
}

std::string rig_text(const std::string& report, const std::string& made,
                     const std::array<RandomLayer, 3>& layers) {
  std::string text = "language 1\nboat \"Tern\" {\n" +
                     (report.empty() ? "" : "  report-date: " + report + "\n") +
                     "}\nlimits {\n  second-measure: off\n}\nwire wire-6 {\n  construction: \"1x19\"\n  "
                     "size: \"6 mm\"\n}\n";
  for (const char* stay : {"forestay", "backstay"})
    text += fmt::format(
        "stay {} {{\n  pin-to-pin: 11_640 mm measured\n  cut-from: drawing\n  cut-from-reason: \"new "
        "boat\"\n  line: wire-6\n{}  stack {{\n    line\n  }}\n}}\n",
        stay, made.empty() ? "" : "  made: " + made + "\n");
  for (std::size_t i = 0; i < layers.size(); ++i)
    if (layers[i].there)
      text += fmt::format("layer {} {{\n{}  stay {} {{\n    pin-to-pin: 11_{} mm measured\n  }}\n}}\n",
                          names[i], layers[i].date.empty() ? "" : "  date: " + layers[i].date + "\n",
                          layers[i].of_forestay ? "forestay" : "backstay", 650 + i);
  return text;
}

RC_GTEST_PROP(LaterLayers, StandBesideNoEarlierDay, ()) {
  std::array<RandomLayer, 3> layers;
  for (RandomLayer& layer : layers)
    layer = {*rc::gen::arbitrary<bool>(), *rc::gen::arbitrary<bool>(), a_day_or_none()};
  const std::string report = a_day_or_none();
  const std::string made = a_day_or_none();
  const Compilation boat = test::tried(rig_text(report, made, layers));

  bool after_report = false;
  std::string latest;       // the last layer that is there, with its day
  std::string beside_label; // whether the forestay's length is of a layer that came after it was made
  for (std::size_t i = 0; i < layers.size(); ++i) {
    if (!layers[i].there)
      continue;
    after_report = after_report || (!report.empty() && layers[i].date > report);
    latest = fmt::format("as {}{}{}", names[i], layers[i].date.empty() ? "" : " ", layers[i].date);
    const bool later = layers[i].date.empty() ? i == 2 : layers[i].date > made;
    if (layers[i].of_forestay && later && !made.empty())
      beside_label = latest;
  }
  RC_ASSERT(test::found(boat, "after-report") == after_report);
  RC_ASSERT(boat.checked.has_value() == !after_report);
  if (after_report)
    return;
  for (const test::PaperText& paper : test::papers_of(*boat.checked)) {
    if (paper.words.find(", rig " + boat.checked->digest()) == std::string::npos)
      continue; // without a foot: for programs
    RC_ASSERT((paper.words.find(", " + latest + ", rig ") != std::string::npos) == !latest.empty());
  }
  const PieceLabel label = piece_labels(*boat.checked).front();
  RC_ASSERT(label.stay == "forestay");
  RC_ASSERT(label.length.empty() == !beside_label.empty());
  if (!beside_label.empty())
    RC_ASSERT(label.waits.find("length as made not on record") == 0U);
}

// With a record of the piece its label has the length as it came out, whatever the layers say.
TEST(LaterLayers, LeaveALabelTheLengthOnRecord) {
  std::array<RandomLayer, 3> layers;
  layers[2] = {true, true, "2026-05-02"};
  const Compilation boat = test::compiled(rig_text("2026-06-01", "2026-04-01", layers) +
                                          "piece of forestay {\n  stage: made\n  body: 11_641 mm measured\n"
                                          "  date: 2026-04-02\n  batch: \"lot 3\"\n}\n");
  ASSERT_TRUE(boat.checked);
  const PieceLabel label = piece_labels(*boat.checked).front();
  EXPECT_EQ(label.length, "body 11\u202f641 mm, made 2026-04-02");
  EXPECT_EQ(label.made, "2026-04-02");
  EXPECT_EQ(label.batch, "lot 3");
}

} // namespace
} // namespace sheerpole::later_layers_test
