#include "backend/json/json.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::cut_list_json_test {
namespace {

Json json_of(const SampleRig& sample) {
  return Json::parse(CutList().generate({sample.checked()}).files.at(2).bytes);
}

TEST(CutListJson, HoldsTheSumExactAndPrinted) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const Json json = json_of(sample);
  EXPECT_EQ(json["format"], "sheerpole-cut-list");
  EXPECT_EQ(json["version"], 1);
  EXPECT_EQ(json["boat"], "Pellimoor");
  EXPECT_FALSE(json["draft"].get<bool>());
  const Json& piece = json["pieces"][0];
  EXPECT_EQ(piece["name"], "cap-shroud.port");
  EXPECT_EQ(piece["side"], "port");
  EXPECT_EQ(piece["line"]["diameter_mm"], 9.0);
  EXPECT_EQ(piece["route"], "stated");
  EXPECT_EQ(piece["body"]["length_mm"], 11382.0);
  EXPECT_EQ(piece["cut"]["length_mm"], 12997.6);
  EXPECT_EQ(piece["cut"]["text_ft_in"], "42' 7 11/16\"");
  EXPECT_EQ(piece["sum"][2]["name"], "cut");
  EXPECT_EQ(piece["sum"][2]["total_mm"], 12997.68);
  EXPECT_EQ(piece["sum"][2]["printed_total_mm"], 12997.6);
  EXPECT_EQ(piece["sum"][2]["rows"][2]["amount_mm"], 51.84);
  EXPECT_EQ(piece["sum"][2]["rows"][2]["printed_mm"], 51.8);
  EXPECT_EQ(piece["sum"][1]["rows"][0]["provenance"]["note"], "sheet 4");
  EXPECT_EQ(piece["above"]["splice"], "long-bury");
  EXPECT_EQ(json["adjusters"][0]["to_tighten_mm"], 100.0);
  EXPECT_TRUE(json["adjusters"][0]["to_tighten_turns"].is_null());
  EXPECT_EQ(json["line_totals"][0]["length_before_spare_mm"], 12997.6);
}

TEST(CutListJson, ListsPairsBesideThePieces) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard, 11642.4);
  EXPECT_TRUE(json_of(sample)["pairs"].empty());
  EXPECT_TRUE(json_of(sample)["pair_tolerance_mm"].is_null());
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  const Json json = json_of(sample);
  EXPECT_EQ(json["pieces"].size(), 2u);
  EXPECT_EQ(json["pairs"][0]["pieces"], (Json{"cap-shroud.port", "cap-shroud.starboard"}));
  EXPECT_EQ(json["pairs"][0]["cut_difference_mm"], -0.4);
  EXPECT_FALSE(json["pairs"][0]["printed_alike"].get<bool>());
}

TEST(CutListJson, GivesNoLengthForTheUnknownOrTheIncomplete) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).missing = {
      {SampleRig::saying("contraction of splice long-bury"), SampleRig::saying("make a test splice"), {}}};
  const Json json = json_of(sample);
  EXPECT_TRUE(json["pieces"][0]["cut"]["length_mm"].is_null());
  EXPECT_TRUE(json["pieces"][0]["cut"]["plus_x"].get<bool>());
  EXPECT_EQ(json["pieces"][0]["cut"]["text_mm"], "X + 32.0");
  EXPECT_TRUE(json["pieces"][1]["cut"]["length_mm"].is_null());
  EXPECT_FALSE(json["pieces"][1]["complete"].get<bool>());
  EXPECT_EQ(json["pieces"][1]["body"]["length_mm"], 11382.0);
  EXPECT_TRUE(json["draft"].get<bool>());
  EXPECT_EQ(json["draft_reasons"][0]["mend"], "make a test splice");
  EXPECT_EQ(json["line_totals"][0]["not_summed"][0]["reason"], "incomplete");
  EXPECT_EQ(json["line_totals"][1]["not_summed"][0]["reason"], "unknown");
}

TEST(CutListJson, IsTheSameTwice) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  EXPECT_EQ(CutList().generate({sample.checked()}).files.at(2).bytes,
            CutList().generate({sample.checked()}).files.at(2).bytes);
}

} // namespace
} // namespace sheerpole::cut_list_json_test
