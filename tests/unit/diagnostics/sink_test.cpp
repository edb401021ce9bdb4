#include "diagnostics/sink.hpp"

#include <gtest/gtest.h>

namespace sheerpole::sink_test {
namespace {

DiagnosticBuilder at(std::string_view slug, std::uint32_t place) {
  return diagnose(slug).at({SourceId{0}, place, place + 1});
}

TEST(Sink, TheSameThingAboutTheSamePlaceIsKeptOnce) {
  DiagnosticSink sink;
  sink.report(at("number-wanted", 3));
  sink.report(at("number-wanted", 3));
  sink.report(at("number-wanted", 4));
  sink.report(at("division-by-zero", 3));
  sink.report(diagnose("number-wanted").at({SourceId{1}, 3, 4}));
  EXPECT_EQ(sink.all().size(), 4u);
  EXPECT_EQ(sink.count(Severity::error), 4u);
}

TEST(Sink, FindingsWithoutAPlaceAreAllKept) {
  DiagnosticSink sink;
  for (int i = 0; i < 2; ++i)
    sink.report(diagnose("number-wanted"));
  EXPECT_EQ(sink.all().size(), 2u);
}

TEST(Sink, WithAThousandErrorsItIsFull) {
  DiagnosticSink sink;
  for (std::uint32_t i = 0; i < DiagnosticSink::most_errors; ++i)
    sink.report(at("number-wanted", i));
  EXPECT_EQ(sink.all().size(), DiagnosticSink::most_errors);
  sink.report(at("number-wanted", 7)); // known, so none too many
  EXPECT_EQ(sink.all().size(), DiagnosticSink::most_errors);
  sink.report(at("number-wanted", 5000));
  sink.report(at("number-wanted", 5001));
  ASSERT_EQ(sink.all().size(), DiagnosticSink::most_errors + 1);
  EXPECT_EQ(sink.all().back().slug, "too-many-findings");
  EXPECT_EQ(sink.all().back().primary->span.begin, 5000u);
  EXPECT_TRUE(sink.has_errors());
}

} // namespace
} // namespace sheerpole::sink_test
