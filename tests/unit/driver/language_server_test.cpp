#include "driver/editor/language_server.hpp"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace sheerpole::language_server_test {
namespace {

using editor::Json;

class AServer : public testing::Test {
protected:
  AServer() : server({}, [this](const Json& message) { sent.push_back(message); }) {
    server.take(R"({"jsonrpc": "2.0", "id": 1, "method": "initialize", "params": {"capabilities": {}}})");
    sent.clear();
  }

  static std::string request(int id) {
    return R"({"jsonrpc": "2.0", "method": "sheerpole/ask", "params": {"version": 1, "ask": "starts"}, "id": )" +
           std::to_string(id) + "}";
  }
  static std::string cancelling(const std::string& id) {
    return R"({"jsonrpc": "2.0", "method": "$/cancelRequest", "params": {"id": )" + id + "}}";
  }

  std::vector<Json> sent;
  editor::LanguageServer server;
};

// Language Server Protocol 3.17, "Cancellation Support": a request that is cancelled is still answered,
// with RequestCancelled.
TEST_F(AServer, AnswersWhatIsCancelledByAMessageBehindItAsCancelled) {
  server.hear(cancelling("7"));
  server.take(request(6));
  server.take(request(7));
  server.take(cancelling("7"));
  server.take(request(7));
  ASSERT_EQ(sent.size(), 3U);
  EXPECT_TRUE(sent[0].contains("result"));
  EXPECT_EQ(sent[1]["error"]["code"], -32800);
  EXPECT_EQ(sent[1]["id"], 7);
  EXPECT_TRUE(sent[2].contains("result"));
}

TEST_F(AServer, TakesAnIdThatIsATextForAnotherThanANumber) {
  server.hear(cancelling(R"("7")"));
  server.take(request(7));
  ASSERT_EQ(sent.size(), 1U);
  EXPECT_TRUE(sent[0].contains("result"));
}

TEST_F(AServer, IsNotMovedByWhatCancelsNothing) {
  for (const char* content :
       {"$/cancelRequest", R"({"method": "$/cancelRequest"})",
        R"({"method": "$/cancelRequest", "params": 7})",
        R"({"method": "$/cancelRequest", "params": {"id": {}}})", R"(["$/cancelRequest"])"})
    server.hear(content);
  server.take(request(7));
  ASSERT_EQ(sent.size(), 1U);
  EXPECT_TRUE(sent[0].contains("result"));
}

} // namespace
} // namespace sheerpole::language_server_test
