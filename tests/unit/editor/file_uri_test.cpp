#include "driver/editor/file_uri.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace sheerpole::file_uri_test {
namespace {

using namespace editor;

TEST(FileUri, EscapesAreResolved) {
  EXPECT_EQ(path_of_uri("file:///boats/a%20b/%C3%BC.rig"), "/boats/a b/\u00fc.rig");
  EXPECT_EQ(path_of_uri("file:///boats/../lofts/./a.rig"), "/lofts/a.rig");
  EXPECT_EQ(path_of_uri("file://localhost/a.rig"), "/a.rig");
  EXPECT_EQ(path_of_uri("file:///50%25%zz%"), "/50%%zz%");
  EXPECT_EQ(path_of_uri("file:///a%00b"), "/a%00b");
  EXPECT_EQ(path_of_uri("untitled:Untitled-1"), "untitled:Untitled-1");
}

TEST(FileUri, OfAPath) {
  EXPECT_EQ(uri_of_path("/boats/a b/\u00fc#1.rig"), "file:///boats/a%20b/%C3%BC%231.rig");
  EXPECT_EQ(uri_of_path("untitled:Untitled-1"), "untitled:Untitled-1");
}

RC_GTEST_PROP(FileUri, ThereAndBack, (const std::string& name)) {
  std::string path = "/boats/";
  for (const char c : name)
    if (c != '/' && c != '\0' && c != '.')
      path += c;
  path += "x";
  RC_ASSERT(path_of_uri(uri_of_path(path)) == path);
}

} // namespace
} // namespace sheerpole::file_uri_test
