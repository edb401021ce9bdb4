// How a boat stands with turns that nobody has made, as an editor or a page asks for it.

#include "calculate/tune/turn_planning.hpp"
#include "driver/built_in_backends.hpp"
#include "service/answers.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <iterator>
#include <string>

namespace sheerpole::turns_asked_test {
namespace {

using namespace service;
using testing::HasSubstr;

std::string file_text(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  EXPECT_TRUE(file) << path;
  return {std::istreambuf_iterator<char>(file), {}};
}

/// Boat A of tests/reference/statics, worked with CalculiX and with another solver: what was taken up is
/// stated, the caps of both sides in one place.
class TurnsOfTheService : public testing::Test {
protected:
  TurnsOfTheService()
      : texts(file_text(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.rig")),
        backends(built_in_backends()), answers(texts.texts, backends) {}

  Json ask(Json turns) {
    const Json answered = answers.answer(
        {{"version", 1}, {"ask", "turns"}, {"boat", "boat.rig"}, {"turns", std::move(turns)}});
    EXPECT_EQ(answered["answers"], "turns") << answered.dump();
    return answered["answer"];
  }
  static const Json& named(const Json& all, const std::string& name, const char* key = "name") {
    for (const Json& one : all)
      if (one[key] == name)
        return one;
    throw std::runtime_error("nothing is called " + name);
  }
  static double tension(const Json& answer, const std::string& stay, const char* when = "with") {
    return named(answer["stays"], stay)["newtons"][when].get<double>();
  }
  std::string text() const { return *texts.texts.find("boat.rig"); }
  void change(const std::string& from, const std::string& to) {
    std::string changed = text();
    ASSERT_NE(changed.find(from), std::string::npos) << from;
    for (std::size_t at = changed.find(from); at != std::string::npos;
         at = changed.find(from, at + to.size()))
      changed.replace(at, from.size(), to);
    texts.put("boat.rig", changed);
  }
  /// The boat with the edits of an answer.
  void write(const Json& answer) {
    std::vector<TextEdit> edits;
    for (const Json& edit : answer["edits"])
      edits.push_back({"boat.rig", edit["place"]["begin"]["byte"].get<std::uint32_t>(),
                       edit["place"]["end"]["byte"].get<std::uint32_t>(),
                       edit["replacement"].get<std::string>()});
    texts.put("boat.rig", with_edits("boat.rig", text(), edits));
  }

  test::BoatTexts texts;
  Backends backends;
  Answers answers;
};

/// Tensions of the two programs, to 0.2 %; an M12 pair, coarse pitch 1.75 mm by ISO 261, takes 3.5 mm a
/// turn.
TEST_F(TurnsOfTheService, ListsWhatIsTurnedAndHowSheStands) {
  const Json answer = ask(Json::object());
  EXPECT_EQ(answer["stands"], true);
  EXPECT_EQ(answer["adjusters"].size(), 8u);
  const Json& backstay = named(answer["adjusters"], "backstay", "stay");
  EXPECT_EQ(backstay["turned"], "turn");
  EXPECT_NEAR(backstay["step_mm"].get<double>(), 3.5, 1e-9);
  EXPECT_NEAR(backstay["most"].get<double>(), 0.4 / 3.5, 1e-9);
  EXPECT_NEAR(backstay["least"].get<double>(), -0.4 / 3.5, 1e-9);
  EXPECT_NEAR(tension(answer, "forestay", "now"), 5442.0, 0.002 * 5442.0);
  EXPECT_EQ(tension(answer, "forestay", "now"), tension(answer, "forestay"));
  EXPECT_EQ(answer["edits"].size(), 0u);
  EXPECT_EQ(named(answer["stays"], "cap.port")["aloft_newtons"].size(), 1u);
  const Json& mast = answer["masts"][0];
  EXPECT_EQ(mast["bends"].size(), 1u);
  EXPECT_NEAR(mast["line"].back()["aft_mm"].get<double>(), mast["head_aft_mm"]["with"].get<double>(), 1e-9);
  EXPECT_THAT(answer["cautions"].dump(), HasSubstr("no sail, no wind, no sea"));
}

/// What is said of turns is what comes of the same written into the file.
TEST_F(TurnsOfTheService, WrittenDownTheyStandAsWasSaid) {
  const Json said = ask({{"backstay", 1.5}, {"cap.port", 0.5}, {"cap.starboard", 0.5}});
  EXPECT_EQ(named(said["adjusters"], "backstay", "stay")["beyond"], true);
  ASSERT_EQ(said["edits"].size(), 2u) << said["edits"].dump();
  write(said);
  EXPECT_THAT(text(), HasSubstr("taken-up: 29.25 mm"));
  EXPECT_THAT(text(), HasSubstr("taken-up: 30.25 mm"));
  const Json now = ask(Json::object());
  for (const Json& stay : said["stays"])
    EXPECT_NEAR(tension(now, stay["name"], "now"), stay["newtons"]["with"].get<double>(), 0.01)
        << stay["name"];
  EXPECT_NEAR(now["masts"][0]["head_aft_mm"]["now"].get<double>(),
              said["masts"][0]["head_aft_mm"]["with"].get<double>(), 1e-4);
}

/// A plan of turns, written down as settings and read again, gives what was wished for to 1 mm and 2 %.
TEST_F(TurnsOfTheService, APlanWrittenDownGivesTheWish) {
  change("  shortest: 1 mm\n  longest: 1.8 mm\n", "  shortest: 100 mm\n  longest: 160 mm\n");
  change("length: 1.4 mm", "length: 130 mm");
  texts.put("boat.rig", text() + "\nmast-wish of mast { head-aft: 8 mm ± 1 mm }\n"
                                 "tension-wish of cap { tension: 7 kN ± 0.14 kN }\n");
  const OpenBoat boat = texts.read();
  ASSERT_TRUE(boat.compiled.derived);
  const TunedRig tuned = tuned_rig(*boat.compiled.rig, *boat.compiled.derived);
  ASSERT_TRUE(tuned.stands());
  const TurnPlanning planning = turn_planning(*boat.compiled.rig, tuned);
  ASSERT_EQ(planning.plan.outcome, statics::PlanOutcome::reached);
  Json turns = Json::object();
  for (std::size_t k = 0; k < planning.screws.size(); ++k)
    for (const std::size_t stay : planning.screws[k].stays)
      turns[(*boat.compiled.rig)[tuned.model.stays[stay].stay].name] = planning.plan.turns[k];
  const Json before = ask(Json::object());
  write(ask(turns));
  const Json after = ask(Json::object());
  EXPECT_NEAR(after["masts"][0]["head_aft_mm"]["now"].get<double>() -
                  before["masts"][0]["head_aft_mm"]["now"].get<double>(),
              8.0, 1.0);
  for (const char* cap : {"cap.port", "cap.starboard"})
    EXPECT_NEAR(tension(after, cap, "now"), 7000.0, 0.02 * 7000.0);
}

TEST_F(TurnsOfTheService, OneSideApartGetsABlockOfItsOwn) {
  const Json said = ask({{"cap.port", 1}});
  ASSERT_EQ(said["edits"].size(), 1u);
  write(said);
  EXPECT_THAT(text(), HasSubstr("stay cap.port {\n  taken-up: 32 mm\n}\n"));
  const Json now = ask({{"cap.port", -0.5}});
  EXPECT_NEAR(tension(now, "cap.port", "now"), tension(said, "cap.port"), 0.01);
  EXPECT_NEAR(tension(now, "cap.starboard", "now"), tension(said, "cap.starboard"), 0.01);
  // The side has a statement of its own now, which is changed where it stands.
  write(now);
  EXPECT_THAT(text(), HasSubstr("stay cap.port {\n  taken-up: 30.25 mm\n}\n"));
}

TEST_F(TurnsOfTheService, KeepsUnitsBoundsAndSumsOfTheText) {
  change("  taken-up: 24 mm\n", "  taken-up: 6 turns ± 0.25 turns measured \"counted\"\n");
  change("  taken-up: 16.5 mm\n", "  taken-up: 15 mm + 1.5 mm\n");
  write(ask({{"backstay", 0.5}, {"forestay", -0.5}}));
  EXPECT_THAT(text(), HasSubstr("  taken-up: 6.5 turns ± 0.25 turns measured \"counted\"\n"));
  EXPECT_THAT(text(), HasSubstr("  taken-up: 15 mm + 1.5 mm - 1.75 mm\n"));
}

TEST_F(TurnsOfTheService, AReadTensionIsToBeReadAgain) {
  texts.put("boat.rig", text() + "\ntension-reading of backstay { tension: 4.3 kN ± 0.2 kN }\n");
  const Json said = ask({{"backstay", 0.5}});
  EXPECT_EQ(said["edits"].size(), 0u);
  ASSERT_EQ(said["not_written"].size(), 1u);
  EXPECT_EQ(said["not_written"][0]["stay"], "backstay");
}

TEST_F(TurnsOfTheService, SaysWhatIsSlackWhatFallsAndWhatIsUnknown) {
  const Json slack = ask({{"lower-aft.port", -3}, {"lower-aft.starboard", -3}, {"jib-halyard", 1}});
  EXPECT_EQ(slack["unknown"], Json::array({"jib-halyard"}));
  ASSERT_GE(slack["went_slack"].size(), 1u);
  const std::string name = slack["went_slack"][0];
  EXPECT_EQ(tension(slack, name), 0.0);
  EXPECT_GT(named(slack["stays"], name)["slack_mm"]["with"].get<double>(), 0.0);
  // Caps that are let go leave the pinned spreaders to hang: a mechanism.
  const Json falls = ask({{"cap.port", -40}, {"cap.starboard", -40}});
  EXPECT_EQ(falls["trouble"].size(), 1u);
  EXPECT_TRUE(named(falls["stays"], "backstay")["newtons"]["with"].is_null());
}

TEST_F(TurnsOfTheService, AsksForWhatIsNotStated) {
  change("  axial-stiffness: 112000 kN\n", "");
  const Json answer = ask({{"backstay", 1}});
  EXPECT_EQ(answer["stands"], false);
  EXPECT_EQ(answer["in_the_way"],
            Json::parse(R"([{"of": "mast", "property": "axial-stiffness", "words": ""}])"));
  EXPECT_TRUE(answer["stays"].empty());
}

TEST_F(TurnsOfTheService, RefusesTurnsThatAreNone) {
  for (const char* turns : {R"("one")", R"({"backstay": "one"})", R"({"backstay": 1e9})"}) {
    const Json answered = Json::parse(answers.answer(std::string_view(
        std::string(R"({"version": 1, "ask": "turns", "boat": "boat.rig", "turns": )") + turns + "}")));
    EXPECT_EQ(answered["answers"], "error") << turns;
  }
}

/// Live, while a slider is moved: in a build for use under 20 ms each, the boat read before. Without
/// optimisation it may take ten times as long.
TEST_F(TurnsOfTheService, AnswersWhileASliderMoves) {
  ask(Json::object());
  const auto begin = std::chrono::steady_clock::now();
  for (int i = 1; i <= 10; ++i)
    ask({{"backstay", 0.1 * i}, {"cap.port", 0.05 * i}});
  const std::chrono::duration<double, std::milli> each = (std::chrono::steady_clock::now() - begin) / 10;
  RecordProperty("milliseconds", std::to_string(each.count()));
  EXPECT_LT(each.count(), 400.0);
}

} // namespace
} // namespace sheerpole::turns_asked_test
