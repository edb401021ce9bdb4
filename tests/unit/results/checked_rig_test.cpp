#include "results/checked_rig.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

namespace sheerpole::checked_rig_test {
namespace {

std::vector<std::string> spoken(const std::vector<DraftReason>& reasons) {
  std::vector<std::string> result;
  for (const DraftReason& reason : reasons)
    result.push_back(reason.subject + ": " + reason.reason + "; " + reason.mend);
  return result;
}

TEST(CheckedRig, DoesNotExistWhenAnErrorStands) {
  SampleRig sample;
  const auto rig = std::make_shared<const Rig>(sample.rig);
  const auto derived = std::make_shared<const Derived>(sample.derived);
  Diagnostic error;
  error.severity = Severity::error;
  EXPECT_FALSE(CheckedRig::make(nullptr, rig, derived, {error}));
  error.severity = Severity::warning;
  EXPECT_TRUE(CheckedRig::make(nullptr, rig, derived, {error}));
}

TEST(CheckedRig, IsNoDraftWhenEverythingIsKnown) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  EXPECT_TRUE(sample.checked().draft_reasons().empty());
}

TEST(CheckedRig, NamesMissingInputsOncePerPiece) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  const StayId starboard = sample.add_cap_shroud(Side::starboard);
  const MissingInput missing{
      SampleRig::saying("contraction of splice long-bury"), SampleRig::saying("make a test splice"), {}};
  sample.piece(port).missing = {missing, missing};
  sample.piece(starboard).missing = {missing};
  const CheckedRig checked = sample.checked();
  EXPECT_THAT(spoken(checked.draft_reasons()),
              testing::ElementsAre(
                  "cap-shroud.port: contraction of splice long-bury is missing; make a test splice",
                  "cap-shroud.starboard: contraction of splice long-bury is missing; make a test splice"));
  EXPECT_THAT(spoken(checked.draft_reasons(checked.derived().stays[1].pieces[0])),
              testing::ElementsAre(
                  "cap-shroud.starboard: contraction of splice long-bury is missing; make a test splice"));
}

TEST(CheckedRig, NamesEachAssumptionOnceHoweverManyTermsRestOnIt) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  Piece& piece = sample.piece(port);
  piece.body.terms[0].provenance.assumptions = {"point cap-tang"};
  piece.cut.terms[0].provenance.assumptions = {"point cap-tang"}; // the body as one term
  for (const std::size_t contraction : {3u, 6u}) {
    piece.cut.terms[contraction].provenance.source_class = SourceClass::assumed;
    piece.cut.terms[contraction].provenance.assumptions = {"contraction of splice long-bury"};
  }
  EXPECT_THAT(
      spoken(sample.checked().draft_reasons()),
      testing::ElementsAre("cap-shroud.port: point cap-tang is assumed; measure it, or name who gave the "
                           "number",
                           "cap-shroud.port: contraction of splice long-bury is assumed; make a test "
                           "splice on this rope; or, as it is heat-set, state contraction-rule: "
                           "equals-first-creep"));
}

TEST(CheckedRig, CallsAnAssumedTermByItsOwnNameWhenItNamesNothing) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).body.terms[4].provenance.source_class = SourceClass::assumed;
  EXPECT_EQ(sample.checked().draft_reasons().at(0).reason, "lash-block is assumed");
}

TEST(CheckedRig, AnUnknownLengthIsNoDraftByItself) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  EXPECT_TRUE(sample.checked().draft_reasons().empty());
}

} // namespace
} // namespace sheerpole::checked_rig_test
