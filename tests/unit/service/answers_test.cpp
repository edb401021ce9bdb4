#include "service/answers.hpp"

#include "driver/built_in_backends.hpp"
#include "service/numbers.hpp"
#include "service/trial.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <iterator>
#include <string>
#include <vector>

namespace sheerpole::answers_test {
namespace {

using namespace service;
using testing::HasSubstr;

class TheService : public testing::Test {
protected:
  TheService() : texts(test::small_boat), backends(built_in_backends()), answers(texts.texts, backends) {}

  Json ask(Json request) {
    request["version"] = 1;
    request["boat"] = "boat.rig";
    Json answered = answers.answer(request);
    EXPECT_EQ(answered["version"], 1);
    return answered;
  }

  test::BoatTexts texts;
  Backends backends;
  Answers answers;
};

TEST_F(TheService, RefusesWhatIsNoRequest) {
  const auto message = [&](const std::string& request) {
    const Json answered = Json::parse(answers.answer(std::string_view(request)));
    EXPECT_EQ(answered["answers"], "error");
    return answered["message"].get<std::string>();
  };
  EXPECT_EQ(message("no JSON"), "a request is a JSON object");
  EXPECT_EQ(message("[1]"), "a request is a JSON object");
  EXPECT_THAT(message("{}"), HasSubstr("is not known; this is version 1"));
  EXPECT_THAT(message(R"({"version": 2})"), HasSubstr("version 2"));
  EXPECT_EQ(message(R"({"version": 1})"), "`ask` is missing or is another kind of value");
  EXPECT_EQ(message(R"({"version": 1, "ask": "weather"})"), "nothing of the name `weather` can be asked");
  EXPECT_EQ(message(R"({"version": 1, "ask": "hover"})"), "`boat` is missing or is another kind of value");
  EXPECT_EQ(message(R"({"version": 1, "ask": "hover", "boat": "boat.rig"})"),
            "`at` is missing or is another kind of value");
  EXPECT_EQ(
      message(R"({"version": 1, "ask": "hover", "boat": "boat.rig", "file": "b.rig", "at": {"byte": 1}})"),
      "`b.rig` is no file of this boat");
  EXPECT_EQ(message(R"({"version": 1, "ask": "set", "boat": "boat.rig", "settings": [1]})"),
            "`settings` is missing or is another kind of value");
}

TEST_F(TheService, FindsAPlaceByEveryWayOfCounting) {
  const std::string text = "\xEF\xBB\xBFlanguage 1\n# \u00e9\u20ac\U0001F6A2\nlet a = 1 mm\n";
  texts.put("boat.rig", text);
  const auto at = [&](Json place) {
    return ask({{"ask", "hover"}, {"at", std::move(place)}})["answer"]["place"]["begin"];
  };
  const Json by_byte = at({{"byte", text.find("a = 1")}});
  EXPECT_EQ(by_byte["line"], 2);
  EXPECT_EQ(by_byte["character"], 4);
  EXPECT_EQ(by_byte["byte"], text.find("a = 1"));
  EXPECT_EQ(at({{"unit", by_byte["unit"]}}), by_byte);
  EXPECT_EQ(at({{"line", 2}, {"character", 4}}), by_byte);
}

TEST_F(TheService, ReadsAnewWhatHasChanged) {
  EXPECT_EQ(ask({{"ask", "findings"}})["answer"]["calculated"], true);
  texts.put("boat.rig", "language 1\nuse \"parts.rig\"\n");
  EXPECT_EQ(ask({{"ask", "findings"}})["answer"]["calculated"], false);
  texts.put("parts.rig", "language 1\n");
  EXPECT_EQ(ask({{"ask", "findings"}})["answer"]["calculated"], true);
  texts.put("parts.rig", "language 1\nlet a = mmm\n");
  EXPECT_EQ(ask({{"ask", "findings"}})["answer"]["calculated"], false);
}

TEST_F(TheService, PapersAreListedAndMade) {
  const Json list = ask({{"ask", "papers"}})["answer"];
  ASSERT_TRUE(list.is_array());
  EXPECT_GT(list.size(), 10u);
  EXPECT_FALSE(list[0]["files"][0].contains("text"));
  const Json made = ask({{"ask", "papers"}, {"only", {"cut-list"}}})["answer"];
  ASSERT_EQ(made.size(), 1u);
  EXPECT_THAT(made[0]["files"][0]["text"].get<std::string>(), HasSubstr("cap-shroud"));
  texts.put("boat.rig", "stay {");
  EXPECT_TRUE(ask({{"ask", "papers"}})["answer"].is_null());
}

TEST_F(TheService, DeclarationsStandAsTheyAreWritten) {
  texts.put("boat.rig", test::small_boat + "\nreading of cap-shroud.port {\n  method: messenger\n"
                                           "  knots: 4  # little ones\n}\n");
  const Json readings = ask({{"ask", "declarations"}, {"kind", "reading"}})["answer"];
  ASSERT_EQ(readings.size(), 1u);
  EXPECT_EQ(readings[0]["of"], "cap-shroud.port");
  EXPECT_EQ(readings[0]["properties"][1]["name"], "knots");
  EXPECT_EQ(readings[0]["properties"][1]["written"], "4");
  const Json stay = ask({{"ask", "declarations"}, {"kind", "stay"}})["answer"][0];
  EXPECT_EQ(stay["title"], "Cap shroud");
  EXPECT_EQ(stay["inside"][0]["properties"][2]["name"], "screw-12");
  EXPECT_EQ(stay["inside"][0]["properties"][2]["written"], " (length: 350 mm)");
  const Json points = ask({{"ask", "declarations"}, {"kind", "points"}})["answer"][0];
  EXPECT_EQ(points["on"], "");
  EXPECT_EQ(points["properties"][1]["title"], "Plate");
  texts.put("boat.rig", "cord orange {");
  EXPECT_EQ(ask({{"ask", "declarations"}})["answer"][0]["name"], "orange");
}

TEST_F(TheService, AnAssumedNumberSaysWhichPiecesWaitForIt) {
  std::string text = test::small_boat;
  text.replace(text.find("82 mm"), 5, "82 mm assumed");
  text.replace(text.find("9 mm\"\n"), 5, "9 mm\" assumed");
  text += "\nthimble eye-9 {\n  length: 20 mm\n  lower: rope-seat (diameter: 28 mm assumed)\n}\n";
  texts.put("boat.rig", text);
  const auto pieces = [&](const std::string& of, const std::string& property) {
    const Json all = ask({{"ask", "numbers"}})["answer"];
    for (const Json& number : all)
      if (number["of"] == of && number["property"] == property)
        return number["pieces"];
    return Json("no such number");
  };
  EXPECT_EQ(pieces("toggle-12", "length"), (Json{"cap-shroud.port", "cap-shroud.starboard"}));
  EXPECT_EQ(pieces("hmpe-9", "diameter"), Json::array());
  EXPECT_EQ(pieces("eye-9", "lower.diameter"), Json::array());
}

TEST_F(TheService, StaysSayHowFarTheyAre) {
  const Json stays = ask({{"ask", "stays"}})["answer"];
  ASSERT_EQ(stays.size(), 2u);
  EXPECT_EQ(stays[0]["name"], "cap-shroud.port");
  EXPECT_EQ(stays[0]["pieces"][0]["state"], "not measured");
  EXPECT_EQ(stays[0]["adjusters"][0]["to_tighten_mm"], 50.0);
}

// Read twice to 11 648 mm, and drawn at 11 650 or 11 700 mm: `routes-apart` is 5 mm.
TEST(Answers, SayWhereAnotherWayGivesSomethingElse) {
  const Backends backends = built_in_backends();
  const auto piece = [&](const std::string& drawn) {
    test::BoatTexts texts("language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
                          "stay forestay {\n  pin-to-pin: " +
                          drawn +
                          " mm drawn\n  line: wire-6\n  stack {\n    line\n  }\n}\n"
                          "reading of forestay {\n  method: tape\n  runs: 11_648 mm, 11_648 mm\n}\n");
    Answers answers(texts.texts, backends);
    return answers.answer(
        Json{{"version", 1}, {"boat", "boat.rig"}, {"ask", "stays"}})["answer"][0]["pieces"][0];
  };
  EXPECT_EQ(piece("11_650")["ways_differ"], false);
  EXPECT_EQ(piece("11_700")["ways_differ"], true);
}

TEST_F(TheService, ATrialSaysWhatChanges) {
  // The plate 100 mm lower: from 9093.40 mm to the root of 1.3^2 + 9.1^2 m, which is 9192.39 mm.
  const Json trial = ask({{"ask", "set"}, {"settings", {"plate-a=(0, 1.4, 0.9) m mirrored"}}})["answer"];
  EXPECT_EQ(trial["changed"], true);
  ASSERT_EQ(trial["stays"].size(), 2u);
  EXPECT_NEAR(trial["stays"][0]["pin_to_pin"]["change_mm"].get<double>(), 98.99, 0.01);
  EXPECT_TRUE(ask({{"ask", "set"}, {"settings", {"gone=1 mm"}}})["answer"]["changed"].is_null());
  EXPECT_EQ(ask({{"ask", "set"}, {"settings", Json::array()}})["answer"]["changed"], false);
}

TEST_F(TheService, EveryPlaceCanBeAskedForAllThatThereIs) {
  for (const char* what : {"complete", "hover", "definition", "references", "rename", "symbols", "tokens",
                           "fold", "format", "inlay", "actions", "numbers", "declarations"})
    for (std::size_t at = 0; at < test::small_boat.size() + 10; at += 7) {
      const Json answered = ask({{"ask", what}, {"at", {{"byte", at}}}, {"new_name", "other-name"}});
      EXPECT_EQ(answered["answers"], what) << answered;
    }
}

constexpr const char* all_that_is_asked[] = {
    "findings", "complete", "hover",   "definition", "references", "rename",       "format", "symbols",
    "fold",     "inlay",    "actions", "tokens",     "numbers",    "declarations", "stays",  "set"};

/// A boat of which a piece is gone and in which something stands that nobody meant, in any way of counting.
RC_GTEST_PROP(Answers, AnyTextIsAnswered, ()) {
  const std::string signs[] = {"{",
                               "}",
                               "(",
                               ")",
                               ":",
                               ",",
                               "\"",
                               "#",
                               "\u00e9",
                               "\U0001F6A2",
                               "\r",
                               "\n",
                               " from ",
                               ".",
                               "9",
                               " x ",
                               "\xEF\xBB\xBF",
                               "use \"b.rig\"\n",
                               "stay ",
                               "let = ",
                               ">"};
  std::string text = test::small_boat;
  const auto begin = *rc::gen::inRange<std::size_t>(0, text.size());
  const auto gone = *rc::gen::inRange<std::size_t>(0, 60);
  const auto picks =
      *rc::gen::container<std::vector<std::size_t>>(rc::gen::inRange<std::size_t>(0, std::size(signs)));
  std::string instead;
  for (const std::size_t pick : picks)
    instead += signs[pick];
  text.replace(begin, gone, instead);
  test::BoatTexts texts(text);
  Answers answers(texts.texts, {});
  const auto place = *rc::gen::inRange<std::size_t>(0, text.size() + 10);
  const std::string counted = *rc::gen::element<std::string>("byte", "unit");
  for (const char* asked : all_that_is_asked) {
    const Json answered = answers.answer({{"version", 1},
                                          {"ask", asked},
                                          {"boat", "boat.rig"},
                                          {"at", {{counted, place}}},
                                          {"new_name", "other-name"},
                                          {"settings", Json::array()}});
    RC_ASSERT(answered["answers"] == asked);
  }
}

/// A form: the text with this value written where the number asks for it.
std::string filled(const std::string& text, const NumberEntry& number, const std::string& value) {
  TextEdit edit = *number.write;
  edit.replacement = number.before + value + number.after;
  return with_edits("boat.rig", text, {edit});
}

const NumberEntry* find(const std::vector<NumberEntry>& all, const std::string& of,
                        const std::string& property) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const NumberEntry& each) {
    return each.of == of && each.property == property;
  });
  return found == all.end() ? nullptr : &*found;
}

TEST(Numbers, AStayIsMeasuredByAForm) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  const std::vector<NumberEntry> all = numbers(boat);
  const NumberEntry* runs = find(all, "cap-shroud.port", "runs");
  ASSERT_NE(runs, nullptr);
  EXPECT_EQ(runs->state, NumberState::not_measured);
  texts.put("boat.rig", filled(test::small_boat, *runs, "9_095 mm, 9_096 mm"));
  const OpenBoat measured = texts.read();
  EXPECT_FALSE(measured.compiled.has_errors);
  const std::vector<NumberEntry> then = numbers(measured);
  const NumberEntry* port = find(then, "cap-shroud.port", "runs");
  const NumberEntry* starboard = find(then, "cap-shroud.starboard", "runs");
  ASSERT_NE(port, nullptr);
  ASSERT_NE(starboard, nullptr);
  EXPECT_EQ(port->state, NumberState::stated);
  EXPECT_EQ(starboard->state, NumberState::not_measured);
}

TEST(Numbers, WhatIsMissingIsWrittenWhereItBelongs) {
  std::string text = test::small_boat;
  const auto without = [&](const std::string& words) { text.erase(text.find(words), words.size()); };
  without("  length: 82 mm\n");
  without(" (length: 350 mm)");
  test::BoatTexts texts(text);
  for (const auto& [of, value] : {std::pair{"toggle-12", "82 mm measured"}, {"screw-12", "350 mm"}}) {
    const OpenBoat boat = texts.read();
    const std::vector<NumberEntry> all = numbers(boat);
    const NumberEntry* missing = find(all, of, "length");
    if (missing == nullptr || missing->state != NumberState::missing || !missing->write) {
      ADD_FAILURE() << of;
      continue;
    }
    text = filled(text, *missing, value);
    texts.put("boat.rig", text);
  }
  const OpenBoat boat = texts.read();
  EXPECT_FALSE(boat.compiled.has_errors) << text;
  for (const NumberEntry& number : numbers(boat))
    EXPECT_FALSE(number.state == NumberState::missing && number.property == "length") << number.words;
  const std::vector<NumberEntry> then = numbers(boat);
  const NumberEntry* toggle = find(then, "toggle-12", "length");
  ASSERT_NE(toggle, nullptr);
  EXPECT_EQ(toggle->state, NumberState::measured);
}

TEST(Numbers, WhatIsStatedIsReplaced) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  const std::vector<NumberEntry> all = numbers(boat);
  const NumberEntry* plate = find(all, "plate-a", "");
  ASSERT_NE(plate, nullptr);
  EXPECT_EQ(plate->state, NumberState::drawn);
  EXPECT_EQ(plate->written, "(0.0, 1.4, 1.0) m mirrored drawn");
  const std::string now = filled(test::small_boat, *plate, "(0.0, 1.5, 1.0) m mirrored measured");
  EXPECT_THAT(now, HasSubstr("  plate-a \"Plate\": (0.0, 1.5, 1.0) m mirrored measured\n"));
}

} // namespace
} // namespace sheerpole::answers_test
