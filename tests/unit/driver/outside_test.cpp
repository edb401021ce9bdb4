#include "driver/built_in_backends.hpp"
#include "driver/outside/plugin_main.hpp"

#include "backend/process/protocol.hpp"
#include "kinds/kind_row.hpp"
#include "plugins/echo/echo.hpp"
#include "plugins/template/template.hpp"
#include "service/compile.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

namespace sheerpole::outside_test {
namespace {

/// Tells what paper it was asked for.
class Papers final : public Backend {
public:
  BackendDescription describe() const override {
    return {.name = "papers", .summary = "which paper", .outputs = {"p"}};
  }
  OutputBundle generate(const BackendRequest& request) const override {
    return {{{"p", std::string(name_of(request.paper))}}};
  }
};

struct Said {
  int code = 0;
  std::string out;
  std::string errors;
};

Said ask(const Backend& backend, const std::string& request) {
  std::istringstream in(request);
  std::ostringstream out;
  std::ostringstream errors;
  const int code = plugin_main(backend, in, out, errors);
  return {code, out.str(), errors.str()};
}

const RigOrigin smallest{
    .rig = "boat.rig",
    .files = {{"boat.rig",
               "language 1\nuse \"../library/parts.rig\"\nstay s {\n  pin-to-pin: 5 m\n  line: wire-6\n"
               "  stack {\n    toggle-a\n    line\n    toggle-a\n  }\n}\n"},
              {"../library/parts.rig",
               "language 1\nwire wire-6 { \n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
               "toggle toggle-a {\n  length: 50 mm\n}\n"}},
    .settings = {"toggle-a.length=60 mm"},
    .shop = {}};

class Texts final : public FileReader {
public:
  Result<std::string, Failure> read(const std::string& path, std::size_t) override {
    for (const RigText& file : smallest.files)
      if (file.name == path)
        return file.text;
    return Failure::not_found;
  }
};

CheckedRig checked_smallest() {
  Texts texts;
  Compilation compilation =
      compile("boat.rig", texts, {.settings = smallest.settings, .folders = {"../library"}});
  EXPECT_TRUE(compilation.checked) << (compilation.findings.empty() ? "" : compilation.findings[0].message);
  return *compilation.checked;
}

TEST(PluginMain, DescribesItself) {
  const Said said = ask(Template(), describe_request("0"));
  EXPECT_EQ(said.code, 0) << said.errors;
  const auto reply = read_describe_reply(said.out);
  ASSERT_TRUE(reply.ok());
  EXPECT_EQ(reply.value().name, "template");
}

TEST(PluginMain, MakesWhatTheBackEndMakes) {
  const CheckedRig checked = checked_smallest();
  const BackendRequest request{.checked = checked, .paper = PaperSize::letter};
  const Echo echo;
  const Template to_copy;
  const Papers papers;
  for (const Backend* backend : std::initializer_list<const Backend*>{&echo, &to_copy, &papers}) {
    const Said said = ask(*backend, generate_request(request, smallest, "0"));
    EXPECT_EQ(said.code, 0) << said.errors;
    const auto reply = read_generate_reply(said.out);
    ASSERT_TRUE(reply.ok());
    const OutputBundle bundle = backend->generate(request);
    ASSERT_EQ(reply.value().files.size(), bundle.files.size());
    EXPECT_EQ(reply.value().files[0].name, bundle.files[0].name);
    EXPECT_EQ(reply.value().files[0].bytes, bundle.files[0].bytes);
  }
}

TEST(PluginMain, TellsWhenItComesToAnotherRig) {
  const CheckedRig checked = checked_smallest();
  RigOrigin other = smallest;
  other.settings.clear();
  const Said said = ask(Echo(), generate_request({.checked = checked}, other, "0.0.9"));
  EXPECT_EQ(said.code, 1);
  EXPECT_EQ(said.out, "");
  EXPECT_NE(said.errors.find("comes to another rig than sheerpole 0.0.9"), std::string::npos)
      << said.errors;
}

TEST(PluginMain, TakesNothingButARequest) {
  for (const char* text : {"", "nothing", "[]", "{}", "{\"format\": \"sheerpole-request\"}",
                           "{\"format\": \"sheerpole-request\", \"version\": 2, \"verb\": \"describe\"}",
                           "{\"format\": \"sheerpole-request\", \"version\": 1, \"verb\": \"generate\"}"}) {
    const Said said = ask(Echo(), text);
    EXPECT_EQ(said.code, 1) << text;
    EXPECT_EQ(said.out, "") << text;
    EXPECT_NE(said.errors, "") << text;
  }
}

TEST(FileClaims, NamesTheOneThatCameFirst) {
  FileClaims claims;
  claims.add("cut-list.txt", "cut-list");
  claims.add("a/b", "mine");
  EXPECT_EQ(claims.clash("c", "mine"), std::nullopt);
  EXPECT_EQ(claims.clash("Cut-List.txt", "mine"), "cut-list writes `cut-list.txt`");
  EXPECT_EQ(claims.clash("a/b", "mine"), "it writes that file already");
  EXPECT_EQ(claims.clash("a", "mine"), "it writes `a/b` already");
}

// A rig file that could name a program could start one. Only the command line can, so the language has no
// word for it.
TEST(Outside, NoWordOfTheLanguageNamesAProgram) {
  const std::vector<std::string> words = {"program", "command", "outside", "back-end", "backend",
                                          "plugin",  "plug-in", "run",     "exec",     "execute",
                                          "start",   "script",  "shell",   "pipe"};
  std::size_t seen = 0;
  for (const KindRow& kind : all_kinds()) {
    EXPECT_EQ(std::count(words.begin(), words.end(), kind.name), 0) << kind.name;
    for (const PropertyRow& property : kind.properties) {
      EXPECT_EQ(std::count(words.begin(), words.end(), property.name), 0)
          << kind.name << "." << property.name;
      ++seen;
    }
  }
  EXPECT_GT(seen, 100U);
}

} // namespace
} // namespace sheerpole::outside_test
