#include "driver/editor/message_stream.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

namespace sheerpole::message_stream_test {
namespace {

using namespace editor;
using testing::ElementsAre;

/// What comes of these bytes, fed in pieces of this size; faults stand in brackets.
std::vector<std::string> arrived(const std::string& bytes, std::size_t piece = 1'000'000) {
  MessageStream stream;
  std::vector<std::string> result;
  for (std::size_t at = 0; at < bytes.size(); at += piece) {
    stream.feed(std::string_view(bytes).substr(at, piece));
    while (const auto each = stream.next())
      result.push_back(each->fault.empty() ? each->content : "[" + each->fault + "]");
  }
  return result;
}

TEST(MessageStream, TakesMessagesApart) {
  EXPECT_THAT(arrived(framed("{}") + framed("") + framed("\u00e9")), ElementsAre("{}", "", "\u00e9"));
  EXPECT_EQ(framed("\u00e9"), "Content-Length: 2\r\n\r\n\u00e9");
}

TEST(MessageStream, HeadersAreReadHoweverTheyAreWritten) {
  EXPECT_THAT(arrived("content-length:2\n\n{}"), ElementsAre("{}"));
  EXPECT_THAT(
      arrived("Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nCONTENT-LENGTH:   2  \r\n\r\n{}"),
      ElementsAre("{}"));
}

TEST(MessageStream, GoesOnBehindWhatIsNoHeader) {
  EXPECT_THAT(arrived("nonsense\r\n" + framed("{}")),
              ElementsAre("[a line of a header that is none]", "{}"));
  EXPECT_THAT(arrived("Content-Length: many\r\n\r\n" + framed("{}")),
              ElementsAre("[a line of a header that is none]", "{}"));
  EXPECT_THAT(arrived("Content-Length: -2\r\n\r\n" + framed("{}")),
              ElementsAre("[a line of a header that is none]", "{}"));
  EXPECT_THAT(arrived("Content-Type: x\r\n\r\n" + framed("{}")),
              ElementsAre("[a header without Content-Length]", "{}"));
  EXPECT_THAT(arrived("Content-Length: 99999999999999999999999\r\n\r\n" + framed("{}")),
              ElementsAre("[a line of a header that is none]", "{}"));
}

TEST(MessageStream, PassesOverAMessageThatIsTooLarge) {
  const std::string large(largest_message_bytes + 1, 'x');
  EXPECT_THAT(arrived(framed(large) + framed("{}")), ElementsAre("[a message that is too large]", "{}"));
}

TEST(MessageStream, BytesWithoutALineEndDoNotPileUp) {
  EXPECT_THAT(arrived(std::string(100'000, 'x')), ElementsAre("[no header]"));
}

RC_GTEST_PROP(MessageStream, ComesToTheSameInWhateverPieces, (const std::vector<std::string>& contents)) {
  std::string bytes;
  for (const std::string& content : contents)
    bytes += framed(content);
  const auto piece = *rc::gen::inRange<std::size_t>(1, 20);
  RC_ASSERT(arrived(bytes, piece) == contents);
}

RC_GTEST_PROP(MessageStream, AnyBytesComeToAnEnd, (const std::string& bytes)) {
  const auto result = arrived(bytes + "\n\n" + framed("last"));
  RC_ASSERT(result.size() <= bytes.size() + 3);
}

} // namespace
} // namespace sheerpole::message_stream_test
