#include "service/seal.hpp"

#include "base/byte_text.hpp"
#include "driver/built_in_backends.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace sheerpole::seal_test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;

std::string line(const std::string& bytes, const std::string& name) {
  return sha256(bytes) + "  " + name + "\n";
}

/// The small boat, and the list of sums as a sealed folder of hers would have it; the papers are those that
/// the back end itself makes.
class ASealedBoat : public testing::Test {
protected:
  ASealedBoat() : boat(test::small_boat), backends(built_in_backends()) {
    facts =
        R"({"seal": 1, "rig": "rig/boat.rig", "version": "0.1.0", "made": ["--only=cut-list", "--paper=a4"]})";
    const service::OpenBoat read = boat.read();
    list = line(words, "READ-ME.txt");
    for (const auto& papers : service::papers(*read.compiled.checked, backends, {"cut-list"}))
      for (const OutputFile& file : papers.files)
        list += line(file.bytes, "papers/" + file.name);
    list += line(test::small_boat, "rig/boat.rig") + line(facts, "seal.json");
  }

  service::SealCheck check() {
    return service::check_seal(boat.read(), boat.texts, {}, backends, {list, facts, words}, {"cut-list"});
  }

  test::BoatTexts boat;
  Backends backends;
  std::string list;
  std::string facts;
  std::string words = "what it is\n";
};

TEST_F(ASealedBoat, IsAsItWasSealed) {
  const service::SealCheck found = check();
  EXPECT_TRUE(found.faults.none());
  EXPECT_EQ(found.files, 6U); // the cut list comes as text, CSV and JSON
  EXPECT_EQ(found.seal, sha256(list));
  EXPECT_EQ(found.version, "0.1.0");
  EXPECT_THAT(found.not_checked, IsEmpty());
}

TEST_F(ASealedBoat, IsAlteredInHerTextAndInEveryPaperThatFollows) {
  std::string other = test::small_boat;
  other.replace(other.find("82 mm"), 5, "83 mm");
  boat.put("boat.rig", other);
  EXPECT_THAT(check().faults.altered, IsSupersetOf({"papers/cut-list.txt", "rig/boat.rig"}));
}

TEST_F(ASealedBoat, HasNoPaperThatWasNotMade) {
  list += line("x", "papers/more.txt");
  EXPECT_THAT(check().faults.missing, ElementsAre("papers/more.txt"));
}

TEST_F(ASealedBoat, HasNoFileThatIsOnNoList) {
  list.erase(list.find(sha256(test::small_boat)), 64 + 2 + std::string("rig/boat.rig\n").size());
  // Without her file on the list it is not told of what the papers were made: none is made again.
  EXPECT_THAT(check().faults.extra, ElementsAre("rig/boat.rig"));
  EXPECT_EQ(check().version, "");
}

TEST_F(ASealedBoat, TellsWhatIsNotLookedAt) {
  list += line("%PDF", "papers/cut-list.pdf") + "not a sum\n";
  EXPECT_THAT(check().not_checked, ElementsAre("papers/cut-list.pdf"));
  EXPECT_THAT(check().faults.bad_lines, ElementsAre("not a sum"));
  EXPECT_THAT(check().faults.missing, IsEmpty());
}

TEST_F(ASealedBoat, MayLieInAFolderOfHerOwn) {
  service::Texts there;
  there.put("/boats/second/boat.rig", test::small_boat);
  const service::OpenBoat read = service::read_boat("/boats/second/boat.rig", there);
  EXPECT_TRUE(
      service::check_seal(read, there, {}, backends, {list, facts, words}, {"cut-list"}).faults.none());
}

TEST(SealFacts, OfARigThatIsOnNoListOrWithWordsThatAreNotKnownAreNone) {
  const SealSums sums{{"rig/boat.rig", std::string(64, '0')}};
  EXPECT_TRUE(
      how_sealed(R"({"rig": "rig/boat.rig", "made": ["--pdf", "--paper=letter", "--shop=A"]})", sums));
  for (const char* facts :
       {"", "[]", "{}", R"({"rig": "rig/other.rig", "made": []})", R"({"rig": "../boat.rig", "made": []})",
        R"({"rig": "rig/boat.rig", "made": ["--outside=/bin/sh"]})",
        R"({"rig": "rig/boat.rig", "made": [1]})", R"({"rig": "rig/boat.rig", "made": ["--paper=a0"]})"})
    EXPECT_FALSE(how_sealed(facts, sums)) << facts;
}

} // namespace
} // namespace sheerpole::seal_test
