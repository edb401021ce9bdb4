#include "driver/fleet/fleet_folders.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::fleet_folders_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

TEST(FleetFolders, TheNameOfTheFileWithoutItsEnding) {
  EXPECT_THAT(fleet_folders({"a.rig", "north/b.rig", "/loft/c", "d.e.rig", ".rig"}).value(),
              ElementsAre("a", "b", "c", "d.e", ".rig"));
}

TEST(FleetFolders, OneNameInTwoFoldersIsToldApartByThese) {
  EXPECT_THAT(fleet_folders({"north/a.rig", "south/a.rig", "a.rig", "b.rig"}).value(),
              ElementsAre("north-a", "south-a", "a", "b"));
  EXPECT_THAT(fleet_folders({"north/./x/../a.rig", "../south/a.rig", "../a.rig"}).value(),
              ElementsAre("north-a", "south-a", "a"));
}

TEST(FleetFolders, WhatStillClashesIsAnError) {
  EXPECT_THAT(fleet_folders({"1/north/a.rig", "2/north/a.rig"}).error(),
              HasSubstr("1/north/a.rig and 2/north/a.rig would both be written to the folder north-a"));
  EXPECT_FALSE(fleet_folders({"a.rig", "a.rig"}).ok());
  EXPECT_FALSE(fleet_folders({"a", "a.rig"}).ok());
  EXPECT_FALSE(fleet_folders({"north/a.rig", "south/a.rig", "north-a.rig"}).ok());
}

/// No name leads out of the folder that is written to.
TEST(FleetFolders, NamesStayInside) {
  const auto names = fleet_folders({"..rig", "x/..", ".../a.rig", "../a.rig"});
  for (const std::string& name : names.value()) {
    EXPECT_NE(name, "");
    EXPECT_NE(name, ".");
    EXPECT_NE(name, "..");
    EXPECT_EQ(name.find('/'), std::string::npos);
  }
}

/// A disk with one file.
class Lists final : public FileReader {
public:
  Lists(std::string path, std::string text) : path_(std::move(path)), text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t) override {
    if (path != path_)
      return Failure::not_found;
    return text_;
  }

private:
  std::string path_;
  std::string text_;
};

TEST(FileArguments, AListStandsForWhatItNames) {
  Lists lists("fleet.txt", "a.rig\r\n\nwith blank.rig\n@b.rig");
  EXPECT_THAT(file_arguments({"x.rig", "@fleet.txt", "y.rig"}, lists).value(),
              ElementsAre("x.rig", "a.rig", "with blank.rig", "@b.rig", "y.rig"));
  EXPECT_THAT(file_arguments({"@no.txt"}, lists).error(), HasSubstr("cannot read the list no.txt"));
}

TEST(FileArguments, NoFileIsAnError) {
  Lists lists("empty.txt", "\n\n");
  EXPECT_FALSE(file_arguments({"@empty.txt"}, lists).ok());
}

} // namespace
} // namespace sheerpole::fleet_folders_test
