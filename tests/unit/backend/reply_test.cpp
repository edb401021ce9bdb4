#include "backend/process/outside_json.hpp"
#include "backend/process/protocol.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::reply_test {
namespace {

using Kind = ReplyFault::Kind;

Kind fault_of(const std::string& text) {
  const auto reply = read_generate_reply(text);
  EXPECT_FALSE(reply.ok()) << text;
  return reply.ok() ? Kind{} : reply.error().kind;
}

TEST(Reply, FilesAsTextAndAsBytes) {
  const auto reply = read_generate_reply(
      R"({"version": 1, "files": [{"name": "a/b.txt", "text": "\u00e9\u0000"}, {"name": "c", "base64": "AP8="}]})");
  ASSERT_TRUE(reply.ok());
  ASSERT_EQ(reply.value().files.size(), 2U);
  EXPECT_EQ(reply.value().files[0].name, "a/b.txt");
  EXPECT_EQ(reply.value().files[0].bytes, std::string("é\0", 3));
  EXPECT_EQ(reply.value().files[1].bytes, std::string("\0\xff", 2));
  EXPECT_TRUE(reply.value().papers.empty());
}

TEST(Reply, UnknownMembersAreLeftAlone) {
  EXPECT_TRUE(read_generate_reply(R"({"version": 1, "files": [], "drawings": 7, "x": {"y": []}})").ok());
  EXPECT_TRUE(read_describe_reply(R"({"version": 1, "name": "a", "summary": "b", "options": []})").ok());
}

TEST(Reply, VersionIsLookedAtBeforeTheRest) {
  EXPECT_EQ(fault_of(R"({"version": 2})"), Kind::other_version);
  EXPECT_EQ(fault_of(R"({"version": 0, "files": []})"), Kind::other_version);
  EXPECT_EQ(fault_of(R"({"version": 1.5, "files": []})"), Kind::other_version);
  EXPECT_EQ(fault_of(R"({"version": "1", "files": []})"), Kind::not_as_agreed);
  EXPECT_EQ(fault_of(R"({"files": []})"), Kind::not_as_agreed);
  EXPECT_EQ(fault_of(R"({"format": "another", "version": 1, "files": []})"), Kind::not_as_agreed);
}

TEST(Reply, WhereItIsOddIsSaid) {
  const auto reply = read_generate_reply(
      R"({"version": 1, "files": [{"name": "a", "text": ""}, {"name": 3, "text": ""}]})");
  ASSERT_FALSE(reply.ok());
  EXPECT_EQ(reply.error().kind, Kind::not_as_agreed);
  EXPECT_EQ(reply.error().where, "files[1].name");
  EXPECT_EQ(read_generate_reply("3").error().where, "the whole");
}

TEST(Reply, NamesOfABackEnd) {
  const auto with_name = [](const std::string& name) {
    return read_describe_reply(R"({"version": 1, "name": ")" + name + R"(", "summary": "b"})").ok();
  };
  EXPECT_TRUE(with_name("mass-aloft-2"));
  for (const std::string& name :
       {std::string("Mass"), std::string("2-mass"), std::string(""), std::string("a b"),
        std::string("a\\n"), std::string(41, 'a'), std::string(2'000'000, 'a')})
    EXPECT_FALSE(with_name(name)) << name.substr(0, 50);
  EXPECT_EQ(read_describe_reply(R"({"version": 1, "name": "a", "summary": "b", "outputs": ["../c"]})")
                .error()
                .kind,
            Kind::file_name);
}

TEST(Reply, WrittenAndReadAgain) {
  const BackendDescription description{
      .name = "a-b", .summary = "é \"c\"", .outputs = {"d.txt"}, .sometimes = {"e/f.txt"}};
  const auto described = read_describe_reply(write_describe_reply(description));
  ASSERT_TRUE(described.ok());
  EXPECT_EQ(described.value().name, description.name);
  EXPECT_EQ(described.value().summary, description.summary);
  EXPECT_EQ(described.value().outputs, description.outputs);
  EXPECT_EQ(described.value().sometimes, description.sometimes);
}

RC_GTEST_PROP(Reply, AnyBytesComeBack, (const std::string& bytes)) {
  const auto reply = read_generate_reply(write_generate_reply({{{"a.bin", bytes}}}));
  RC_ASSERT(reply.ok());
  RC_ASSERT(reply.value().files.at(0).bytes == bytes);
}

RC_GTEST_PROP(Reply, AnyTextIsRefusedOrTaken, (const std::string& text)) {
  const auto reply = read_generate_reply(text); // what matters is that it comes to an end
  RC_ASSERT(reply.ok() || !reply.error().what.empty());
}

TEST(JsonText, WhereItGoesAstray) {
  EXPECT_EQ(read_json("{\"a\": 1,\n b}").error(), "it breaks off or goes astray at line 2, column 2");
  EXPECT_EQ(read_json(" \n").error(), "it is empty");
  EXPECT_EQ(read_json("1 2").error(), "it breaks off or goes astray at line 1, column 3");
}

TEST(JsonText, Depth) {
  const auto nested = [](int depth) { return std::string(depth, '[') + std::string(depth, ']'); };
  EXPECT_TRUE(read_json(nested(deepest_json)).ok());
  EXPECT_FALSE(read_json(nested(deepest_json + 1)).ok());
  EXPECT_FALSE(read_json(std::string(5'000'000, '[')).ok());
  EXPECT_TRUE(
      read_json('"' + std::string(500, '[') + "\\\"[[\"").ok()); // within a text they are no brackets
}

// 1e400 is beyond the binary64 of IEEE 754, whose greatest is 1.797...e308.
TEST(Reply, NumberBeyondAll) {
  const auto reply = read_generate_reply(R"({"version": 1, "files": [], "mass": 1e400})");
  ASSERT_FALSE(reply.ok());
  EXPECT_EQ(reply.error().kind, ReplyFault::Kind::not_json);
}

} // namespace
} // namespace sheerpole::reply_test
