// A measuring sheet that was filled in gives the same rig as readings typed by hand, and odd cells are
// refused with their place.
#include "driver/begin/enter_readings.hpp"

#include "plugins/measuring-sheet/measuring_sheet.hpp"
#include "service/compile.hpp"

#include <gmock/gmock.h>

#include <string>
#include <utility>
#include <vector>

namespace sheerpole::enter_readings_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr const char* boat =
    "language 1\n"
    "boat \"Tern\" {\n}\n"
    "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
    "cord red {\n}\n"
    "turnbuckle screw {\n  shortest: 200 mm\n  longest: 300 mm\n}\n"
    "stay forestay \"Forestay\" {\n  line: wire-6\n  stack {\n    line\n    screw (open: 50 %)\n"
    "  }\n}\n"
    "stay cap-shroud {\n  sides: port, starboard\n  line: wire-6\n  stack {\n    line\n"
    "    screw (open: 50 %)\n  }\n}\n";

constexpr const char* headings =
    "stay,side,title,method,length,second-length,cord,knots,pull,temperature,offset,"
    "hoist-offset,below-knot,date,by,note\r\n";

Result<EnteredReadings, std::vector<TableFailure>> entered(const std::string& rows,
                                                           const std::string& text = boat) {
  OneTextReader reader("tern.rig", text);
  return enter_readings("tern.rig", reader, headings + rows, "sheet.csv");
}

std::vector<std::string> refused(const std::string& rows) {
  const auto result = entered(rows);
  std::vector<std::string> words;
  if (!result.ok())
    for (const TableFailure& failure : result.error())
      words.push_back(std::to_string(failure.line) + ":" + std::to_string(failure.column) + " " +
                      failure.words);
  return words;
}

std::vector<std::string> lengths(const std::string& text) {
  OneTextReader reader("tern.rig", text);
  const Compilation made = compile("tern.rig", reader, {});
  std::vector<std::string> result;
  if (made.derived == nullptr)
    return {"not compiled"};
  for (const DerivedStay& stay : made.derived->stays)
    result.push_back((*made.rig)[stay.stay].name + (stay.pin_to_pin.unknown ? " X " : " ") +
                     format_fixed(stay.pin_to_pin.known().millimetres(), 3));
  return result;
}

TEST(EnteredReadings, GiveTheSameRigAsReadingsTypedByHand) {
  const auto sheet =
      entered("forestay,,Forestay,tape,\"11_640 mm\",\"38' 2 3/8\"\"\",,,50 N,12 degC,35 mm,,,2026-05-02,"
              "owner,light wind\r\n"
              "cap-shroud,port,,,,,red,3,80 N,,,20 mm,3 mm,2026-05-02,owner,\r\n"
              "cap-shroud,starboard,,old stay,10.2 m,,,,,,,,,,,\r\n");
  ASSERT_TRUE(sheet.ok());
  EXPECT_EQ(sheet.value().readings, 3u);
  const std::string by_hand =
      std::string(boat) +
      "reading of forestay {\n  method: tape\n  runs: 11_640 mm, 38' 2 3/8\" measured\n  pull: 50 N "
      "measured\n"
      "  temperature: 12 degC measured\n  offset: 35 mm measured\n  date: 2026-05-02\n  by: \"owner\"\n"
      "  note: \"light wind\"\n}\n"
      "reading of cap-shroud.port {\n  method: messenger\n  cord: red\n  knots: 3\n  pull: 80 N measured\n"
      "  hoist-offset: 20 mm measured\n  below-knot: 3 mm measured\n  date: 2026-05-02\n  by: "
      "\"owner\"\n}\n"
      "reading of cap-shroud.starboard {\n  method: old-stay\n  runs: 10.2 m measured\n}\n";
  EXPECT_EQ(lengths(sheet.value().text), lengths(by_hand));
  // (11 640 + 38 ft 2 3/8 in) / 2 less the hook: 11 642.725 mm is 38 ft 2 3/8 in.
  EXPECT_THAT(lengths(by_hand), ElementsAre("forestay 11606.363", HasSubstr("cap-shroud.port X"),
                                            "cap-shroud.starboard 10200.000"));
}

TEST(EnteredReadings, ABlankSheetEntersNothing) {
  OneTextReader reader("tern.rig", boat);
  const Compilation made = compile("tern.rig", reader, {});
  ASSERT_TRUE(made.rig);
  OneTextReader again("tern.rig", boat);
  const auto result = enter_readings("tern.rig", again, measuring_table(*made.rig), "sheet.csv");
  ASSERT_TRUE(result.ok());
  EXPECT_EQ(result.value().readings, 0u);
  EXPECT_EQ(result.value().empty_rows, 3u);
  EXPECT_EQ(result.value().text, boat);
}

TEST(EnteredReadings, BothSidesAndACordThatIsNew) {
  const auto result =
      entered("cap-shroud,both,,tape,10.2 m,,,,,,,,,,,\r\nforestay,,,cord,,,Sky blue,2,,,,,,,,\r\n");
  ASSERT_TRUE(result.ok());
  EXPECT_EQ(result.value().readings, 3u);
  EXPECT_THAT(result.value().text, HasSubstr("cord sky-blue \"Sky blue\" {\n}"));
  EXPECT_THAT(result.value().text, HasSubstr("reading of cap-shroud.port {"));
  EXPECT_THAT(result.value().text, HasSubstr("reading of cap-shroud.starboard {"));
  EXPECT_EQ(result.value().text.find(boat), 0u) << "what the file held stands as it was";
}

TEST(EnteredReadings, OddCellsAreRefusedWithTheirPlace) {
  EXPECT_THAT(refused("forestay,,,tape,15,,,,,,,,,,,\r\n"),
              ElementsAre(HasSubstr("2:17 the length of forestay, `15`")));
  EXPECT_THAT(refused("forstay,,,tape,15 m,,,,,,,,,,,\r\n"),
              ElementsAre("2:1 the rig file has no stay forstay; did you mean `forestay`?"));
  EXPECT_THAT(refused("cap-shroud,,,tape,15 m,,,,,,,,,,,\r\n"),
              ElementsAre(HasSubstr("2:1 cap-shroud has two sides")));
  EXPECT_THAT(refused("forestay,port,,tape,15 m,,,,,,,,,,,\r\n"),
              ElementsAre(HasSubstr("2:10 forestay has no sides")));
  EXPECT_THAT(refused("forestay,,,,15 m,,,,,,,,,,,\r\n"),
              ElementsAre(HasSubstr("does not say how it was read")));
  EXPECT_THAT(refused("forestay,,,tape,15 m,,,,,,,,,2026-02-30,,\r\n"),
              ElementsAre(HasSubstr("is no day")));
  EXPECT_THAT(refused("forestay,,,tape,\"10,95 m\",,,,,,,,,,,\r\n"),
              ElementsAre(HasSubstr("cannot be read")));
  EXPECT_THAT(refused("forestay,,,tape,15 m,,,,,,,,,,,,one more\r\n"),
              ElementsAre(HasSubstr("stands under no heading")));
}

TEST(EnteredReadings, AReadingThatIsThereIsNotEnteredTwice) {
  const std::string row = "forestay,,,tape,11_640 mm,,,,,,,,,2026-05-02,,\r\n";
  const auto once = entered(row);
  ASSERT_TRUE(once.ok());
  OneTextReader reader("tern.rig", once.value().text);
  const auto twice = enter_readings("tern.rig", reader, headings + row, "sheet.csv");
  ASSERT_FALSE(twice.ok());
  EXPECT_EQ(twice.error().front().words, "this reading of forestay stands in the rig file already");
  EXPECT_EQ(twice.error().front().line, 2u);
}

TEST(EnteredReadings, AFileWithErrorsIsLeftAlone) {
  const auto result = entered("forestay,,,tape,11_640 mm,,,,,,,,,,,\r\n", std::string(boat) + "stay {\n");
  ASSERT_FALSE(result.ok());
  EXPECT_THAT(result.error().front().words, HasSubstr("Nothing is entered before they are put right"));
}

} // namespace
} // namespace sheerpole::enter_readings_test
