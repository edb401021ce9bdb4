#include "backend/process/file_name.hpp"

#include <gtest/gtest.h>

namespace sheerpole::file_name_test {
namespace {

TEST(FileName, GoodOnes) {
  for (const char* name : {"a", "masses.txt", "Masses aloft.txt", "masses/aloft.txt", "a/b/c", "été.txt",
                           "a..b", "being-written"})
    EXPECT_EQ(fault_of_file_name(name), "") << name;
  EXPECT_EQ(fault_of_file_name(std::string(200, 'a')), "");
}

TEST(FileName, BadOnes) {
  for (const char* name : {"..", "../a", "a/..", "a/../b", "a/../../b"})
    EXPECT_EQ(fault_of_file_name(name), "leads out of the folder") << name;
  for (const char* name : {".", "./a", "a/.", ".profile", "a/.b", "...", "a/..."})
    EXPECT_EQ(fault_of_file_name(name), "has a part that begins with a dot") << name;
  for (const char* name : {"a/", "a//b"})
    EXPECT_EQ(fault_of_file_name(name), "has a part without a name") << name;
  for (const char* name : {"/", "/a", "//a"})
    EXPECT_EQ(fault_of_file_name(name), "does not begin in the folder") << name;
  for (const std::string& name : {std::string("a\nb"), std::string("a\0b", 3), std::string("a\\b"),
                                  std::string("c:a"), std::string("a\x7f")})
    EXPECT_EQ(fault_of_file_name(name), "holds a sign that is no part of a file name") << name;
  EXPECT_EQ(fault_of_file_name(""), "is empty");
  EXPECT_EQ(fault_of_file_name(std::string(201, 'a')), "is too long");
  EXPECT_EQ(fault_of_file_name("a.txt.being-written"), "is a name of files that are being written");
}

TEST(FileName, Clashes) {
  EXPECT_TRUE(file_names_clash("a.txt", "a.txt"));
  EXPECT_TRUE(file_names_clash("a.txt", "A.TXT"));
  EXPECT_TRUE(file_names_clash("a", "a/b"));
  EXPECT_TRUE(file_names_clash("A/b", "a"));
  EXPECT_FALSE(file_names_clash("a", "ab"));
  EXPECT_FALSE(file_names_clash("a/b", "a/c"));
  EXPECT_FALSE(file_names_clash("", "a"));
}

} // namespace
} // namespace sheerpole::file_name_test
