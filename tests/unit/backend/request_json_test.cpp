#include "backend/json/json.hpp"
#include "unit/backend/measured_shroud.hpp"
#include "units/format_length.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>
#include <string>
#include <string_view>

namespace sheerpole::request_json_test {
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

// A length in JSON is the decimal that would be written, whether it lies in the middle of two or not.
RC_GTEST_PROP(JsonMillimetres, AreTheDecimalThatIsWritten, (int millionths)) {
  for (const double more : {0.0, 0.3, 0.499999, 0.5, 0.500001, 0.7}) {
    const Length length = Length::metres((millionths + more) * 1e-9 * *rc::gen::inRange(1, 100));
    RC_ASSERT(json_millimetres(length) == std::stod(format_millimetres(length, 6)));
  }
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

TEST(RequestJson, HoldsWhatAReadingRestsOn) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  Particular spans;
  spans.name = "spans";
  spans.text = "11.6 m";
  spans.values = {{{11.6, dimension::length}, SampleRig::known(SourceClass::measured), {}}};
  Particular pull;
  pull.name = "pull";
  pull.value = {{50.0, dimension::force}, SampleRig::known(SourceClass::measured), {}};
  pull.value.tolerance = Quantity{5.0, dimension::force};
  Reading reading;
  reading.method = ReadingMethod::tape;
  reading.tape = "steel-tape";
  reading.old_line = MaterialId{1};
  reading.hoist_offset = SampleRig::length(60.0, SourceClass::measured);
  reading.particulars = {spans, pull};
  sample.rig.stays[port.index()].readings = {reading};
  sample.rig.points[0].tolerance = Length::millimetres(5.0);
  const Json json = request_json(sample.checked())["rig"];
  const Json& read = json["stays"][0]["readings"][0];
  EXPECT_EQ(read["tape"], "steel-tape");
  EXPECT_EQ(read["old_line"], "wire-6");
  EXPECT_EQ(read["hoist_offset"]["value_mm"], 60.0);
  EXPECT_EQ(read["particulars"][0]["values_si"], Json::array({11.6}));
  EXPECT_EQ(read["particulars"][1]["si"], 50.0);
  EXPECT_EQ(read["particulars"][1]["tolerance_si"], 5.0);
  EXPECT_EQ(json["points"][0]["tolerance_mm"], 5.0);
  EXPECT_TRUE(json["points"][1]["tolerance_mm"].is_null());
}

TEST(RequestJson, HoldsWhatFollowsFromTheLengths) {
  const Json derived = request_json(measured_shroud().checked())["derived"];
  EXPECT_EQ(derived["inputs"][0]["name"], "eye-allowance of long-bury");
  EXPECT_EQ(derived["inputs"][0]["bound"], 0.003);
  EXPECT_EQ(derived["inputs"][1]["degrees_of_freedom"], 3);
  const Json& stay = derived["stays"][0];
  EXPECT_EQ(stay["other_routes"][0]["slips"][0]["unexplained_mm"], 1.0);
  EXPECT_EQ(stay["uncertainty"]["shares"][0]["share"], 0.864);
  EXPECT_EQ(stay["uncertainty"]["adjuster_reaches"], 1.0);
  EXPECT_EQ(stay["account"]["entries"][1]["dated"], true);
  EXPECT_EQ(stay["account"]["entries"][3]["of_temperature"], true);
  EXPECT_EQ(stay["account"]["left"][1]["to_tighten_mm"], 62.7);
  EXPECT_EQ(stay["temperature"]["rows"][0]["slack_mm"], 7.2);
  EXPECT_EQ(stay["tensions"][0]["newtons"], 3150.0);
  EXPECT_TRUE(stay["tensions"][1]["newtons"].is_null());
  EXPECT_EQ(stay["line_before"]["stiffness"], 1.56);
  EXPECT_TRUE(stay["line_before"]["centre_height_mm"].is_null());
  EXPECT_EQ(stay["fits"][0]["ways"][0]["parts"][0]["count"], 2);
  EXPECT_EQ(stay["fits"][1]["short_by_mm"], -202.0);
}

TEST(RequestJson, RoundsNoiseAwayAndNothingElse) {
  EXPECT_EQ(json_millimetres(Length::millimetres(0.1) + Length::millimetres(0.2)), 0.3);
  EXPECT_EQ(json_millimetres(Length::millimetres(11641.664893)), 11641.664893);
  EXPECT_TRUE(json_millimetres(std::optional<Length>()).is_null());
}

/// Each member of the thing by the table of its fields has a key of its name, but for those that other keys
/// say.
template <class Thing>
void expect_every_member(const Json& json, const Thing& thing,
                         const std::set<std::string_view>& said_otherwise) {
  visit_fields(thing, [&](const auto& field, const auto&) {
    const std::string name(field.name);
    EXPECT_TRUE(json.contains(name) || json.contains(name + "_mm") || said_otherwise.count(field.name) == 1)
        << name << " is not in " << json.dump();
  });
}

TEST(RequestJson, HoldsEveryMemberOfEachThing) {
  SampleRig sample;
  Stay& stay = sample.rig.stays[sample.add_cap_shroud(Side::port).index()];
  stay.readings = {Reading{}};
  sample.rig.spars = {Spar{}};
  sample.rig.spreaders = {Spreader{}};
  sample.rig.spreaders[0].root = PointId{0};
  sample.rig.spreaders[0].tip = PointId{1};
  sample.rig.records = {Record{}};
  const Json json = request_json(sample.checked())["rig"];
  const Rig& rig = sample.rig;
  expect_every_member(json, rig, {"bounds"});
  expect_every_member(json["boat"], rig.boat, {});
  expect_every_member(json["spars"][0], rig.spars[0], {"place"});
  expect_every_member(json["points"][0], rig.points[0], {"base", "position", "influences"});
  expect_every_member(json["spreaders"][0], rig.spreaders[0], {"place"});
  expect_every_member(json["materials"][0], rig.materials[0], {"place"});
  expect_every_member(json["splices"][0], rig.splices[0], {"place"});
  expect_every_member(json["parts"][0], rig.parts[0], {"place"});
  expect_every_member(json["stays"][0], stay, {"base", "place", "stack_place", "trials"});
  expect_every_member(json["stays"][0]["readings"][0], stay.readings[0], {"place", "shift"});
  const Json& stack = json["stays"][0]["stack"];
  expect_every_member(stack[1], stay.stack[1],
                      {"kind", "line_length", "material", "in_hand", "in_hand_over", "stock", "stock_place",
                       "removable_place", "place"});
  expect_every_member(stack[2], stay.stack[2],
                      {"kind", "part", "count", "line_length", "set_length", "open", "hole", "passes",
                       "splice", "spare_bury", "removable", "stock_place", "removable_place", "place"});
  EXPECT_TRUE(stack[2].contains("length"));
  expect_every_member(json["records"][0], rig.records[0], {"stays", "place"});
}

} // namespace
} // namespace sheerpole::request_json_test
