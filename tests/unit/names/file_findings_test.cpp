#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

namespace sheerpole::file_findings_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

using Files = std::map<std::string, std::string>;

TEST(FileFindings, AUsedFileIsReadFromTheFolderOfTheFileThatUsesIt) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"parts/all.rig\"\n"},
                             {"parts/all.rig", "language 1\nuse \"toggles.rig\"\n"},
                             {"parts/toggles.rig", "language 1\ntoggle toggle-12 { length: 82 mm }\n"}});
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.parts.size(), 1u);
  EXPECT_EQ(rig.rig.parts[0].name, "toggle-12");
}

TEST(FileFindings, AFileThatTwoUseIsReadOnce) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"a.rig\"\nuse \"b.rig\"\n"},
                             {"a.rig", "language 1\nuse \"c.rig\"\n"},
                             {"b.rig", "language 1\nuse \"c.rig\"\n"},
                             {"c.rig", "language 1\ntoggle toggle-12 { length: 82 mm }\n"}});
  EXPECT_THAT(rig.findings(), IsEmpty());
  EXPECT_EQ(rig.rig.parts.size(), 1u);
}

TEST(FileFindings, ACircleOfUseIsNamedWhereItCloses) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"parts.rig\"\n"},
                             {"parts.rig", "language 1\nuse \"boat.rig\"\n"}});
  EXPECT_THAT(
      rig.findings(),
      ElementsAre("parts.rig:2:5 `\"boat.rig\"` use-cycle: boat.rig brings in itself, by way of the files "
                  "that it uses\n  here: this file is being read already"));
}

TEST(FileFindings, NothingIsReadOutsideTheFolderOfTheBoat) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"../hardware.rig\"\nuse \"/etc/parts.rig\"\n"
                                          "use \"parts/../../hardware.rig\"\nuse \"\"\n"},
                             {"../hardware.rig", "language 1\n"}});
  EXPECT_THAT(
      rig.findings(),
      ElementsAre(
          "2:5 `\"../hardware.rig\"` use-outside-folder: ../hardware.rig leads outside the folder of the "
          "boat's file",
          "3:5 `\"/etc/parts.rig\"` use-outside-folder: /etc/parts.rig leads outside the folder of the "
          "boat's file",
          "4:5 `\"parts/../../hardware.rig\"` use-outside-folder: parts/../../hardware.rig leads outside "
          "the folder of the boat's file",
          "5:5 `\"\"` use-outside-folder: an empty path leads outside the folder of the boat's file"));
}

TEST(FileFindings, GoingUpInsideTheFolderOfTheBoatIsFine) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"parts/all.rig\"\n"},
                             {"parts/all.rig", "language 1\nuse \"../toggles.rig\"\n"},
                             {"toggles.rig", "language 1\ntoggle toggle-12 { length: 82 mm }\n"}});
  EXPECT_THAT(rig.findings(), IsEmpty());
}

TEST(FileFindings, AFileThatIsNotThereIsMissedOnceHoweverOftenItIsAskedFor) {
  const Understood rig(Files{{"boat.rig", "language 1\nuse \"hardwear.rig\"\nuse \"hardwear.rig\"\n"}});
  EXPECT_THAT(rig.findings(),
              ElementsAre("2:5 `\"hardwear.rig\"` file-not-found: there is no file hardwear.rig\n"
                          "  here: asked for here"));
}

TEST(FileFindings, WithoutTheBoatsOwnFileThereIsNothing) {
  const Understood rig(Files{});
  EXPECT_THAT(rig.findings(), ElementsAre("file-not-found: there is no file boat.rig"));
  EXPECT_THAT(rig.rig.stays, IsEmpty());
}

TEST(FileFindings, AChainOfUseHasAnEnd) {
  Files files;
  for (int i = 0; i <= deepest_use + 1; ++i)
    files[i == 0 ? "boat.rig" : std::to_string(i) + ".rig"] =
        "language 1\nuse \"" + std::to_string(i + 1) + ".rig\"\n";
  const Understood rig(files);
  EXPECT_THAT(rig.findings(),
              ElementsAre("16.rig:2:5 `\"17.rig\"` too-many-files: too many files: a rig may consist "
                          "of 256 files, and `use` may go 16 files deep"));
}

TEST(LanguageLine, EveryFileHasOneOnTop) {
  const Understood rig(Files{{"boat.rig", "# Tern\nlanguage 1\nuse \"parts.rig\"\n"},
                             {"parts.rig", "toggle toggle-12 { length: 82 mm }\n"}});
  EXPECT_THAT(rig.findings(),
              ElementsAre("parts.rig:1:1 `` language-line-missing: the first line does not say which "
                          "language version the file is written in\n"
                          "  put `language 1` on the first line -> language 1"));
}

TEST(LanguageLine, AnotherVersionIsRefused) {
  const Understood rig("language 2\n");
  EXPECT_THAT(
      rig.findings(),
      ElementsAre("1:1 `language 2` language-version: this file is written in language version 2; this "
                  "compiler reads version 1\n  write `language 1` -> language 1"));
}

TEST(LanguageLine, StandsFirstAndOnce) {
  EXPECT_THAT(
      Understood("let drop = 12 mm\nlanguage 1\n").findings(),
      ElementsAre("2:1 `language 1` language-line-not-first: the language line is below other lines"));
  EXPECT_THAT(
      Understood("language 1\nlanguage 1\n").findings(),
      ElementsAre("2:1 `language 1` language-line-twice: the file says twice which language version it is "
                  "written in\n  1:1: the first one"));
}

} // namespace
} // namespace sheerpole::file_findings_test
