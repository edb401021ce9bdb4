#include "backend/paper_words.hpp"

#include <gtest/gtest.h>

namespace sheerpole::source_words_test {
namespace {

TEST(SourceWords, SayClassNoteAndWhatWasWritten) {
  Provenance provenance;
  EXPECT_EQ(source_words(provenance), "no source given");
  provenance.source_class = SourceClass::maker;
  provenance.note = "certificate 1142";
  EXPECT_EQ(source_words(provenance), "maker, certificate 1142");
  provenance.written = "7 3/8 in";
  EXPECT_EQ(source_words(provenance), "maker, certificate 1142, written 7 3/8 in");
  provenance.written = "82 mm"; // what is printed beside it already
  EXPECT_EQ(source_words(provenance), "maker, certificate 1142");
}

TEST(SourceWords, NameTheAssumptionsBehindAComputedNumber) {
  Provenance provenance;
  provenance.source_class = SourceClass::computed;
  provenance.assumptions = {"point a", "point b"};
  EXPECT_EQ(source_words(provenance), "computed; rests on assumed point a, point b");
  provenance.source_class = SourceClass::assumed;
  EXPECT_EQ(source_words(provenance), "assumed");
}

} // namespace
} // namespace sheerpole::source_words_test
