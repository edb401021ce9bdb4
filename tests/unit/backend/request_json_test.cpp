#include "backend/json/json.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole {
namespace {

TEST(RequestJson, HoldsRigAndWhatWasCalculated) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.add_unknown_stay(20.0);
  const Json json = request_json(sample.checked());
  EXPECT_EQ(json["format"], "sheerpole-request");
  EXPECT_EQ(json["version"], 1);
  EXPECT_EQ(json["rig"]["boat"]["title"], "Pellimoor");
  EXPECT_EQ(json["rig"]["points"][1]["y_mm"], 70.0);
  EXPECT_EQ(json["rig"]["stays"][0]["stack"][4]["set_length"]["value_mm"], 160.0);
  EXPECT_EQ(json["rig"]["splices"][0]["bury"]["value_d"], 72.0);
  EXPECT_EQ(json["rig"]["parts"][0]["role"], "boat fitting");
  const Json& cut = json["derived"]["stays"][0]["pieces"][0]["cut"];
  EXPECT_EQ(cut["known_mm"], 12997.68);
  EXPECT_EQ(cut["terms"][3]["amount_mm"], 51.84);
  EXPECT_EQ(cut["terms"][3]["provenance"]["class"], "measured");
  EXPECT_TRUE(json["derived"]["stays"][1]["pin_to_pin"]["unknown"].get<bool>());
  EXPECT_EQ(json["draft_reasons"], Json::array());
}

TEST(RequestJson, GivesPlacesByFileLineAndColumn) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.rig.points[0].provenance.place = Span{SourceId{0}, 16, 20};
  const Json json = request_json(sample.checked());
  EXPECT_EQ(json["rig"]["points"][0]["provenance"]["place"],
            (Json{{"file", "pellimoor.rig"}, {"line", 2}, {"column", 6}}));
  EXPECT_TRUE(json["rig"]["points"][1]["provenance"]["place"].is_null());
}

TEST(RequestJson, RoundsNoiseAwayAndNothingElse) {
  EXPECT_EQ(json_millimetres(Length::millimetres(0.1) + Length::millimetres(0.2)), 0.3);
  EXPECT_EQ(json_millimetres(Length::millimetres(11641.664893)), 11641.664893);
  EXPECT_TRUE(json_millimetres(std::optional<Length>()).is_null());
}

} // namespace
} // namespace sheerpole
