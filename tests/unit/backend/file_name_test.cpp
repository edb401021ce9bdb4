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

TEST(FileName, WhatOtherSystemsMakeOfIt) {
  for (const char* name :
       {"con", "NUL.txt", "a/aux", "Com1.csv", "lpt9", "com\u00b2.txt", "prn .txt", "conout$"})
    EXPECT_EQ(fault_of_file_name(name), "has a part that is a device on some systems") << name;
  for (const char* name : {"console", "com", "com10", "nul1.txt", "a con"})
    EXPECT_EQ(fault_of_file_name(name), "") << name;
  for (const char* name : {"a.", "a./b", "a ", "a /b.txt"})
    EXPECT_EQ(fault_of_file_name(name), "has a part that ends with a dot or a blank, which some disks drop")
        << name;
  for (const char* name : {"a*", "a?", "a|b", "<a>", "\"a\""})
    EXPECT_EQ(fault_of_file_name(name), "holds a sign that is no part of a file name") << name;
  for (const char* name : {"cut\u202etxt.exe", "a\u2066b", "a\u200bb", "a\u2028b", "\ue000", "a\xff"})
    EXPECT_EQ(fault_of_file_name(name), "holds a sign that does not show") << name;
  std::string deep = "a";
  for (int i = 0; i < 3000; ++i)
    deep += "/a";
  EXPECT_EQ(fault_of_file_name(deep), "is too long");
  EXPECT_EQ(fault_of_file_name(deep.substr(0, 33)), "lies too deep");
  EXPECT_EQ(fault_of_file_name(deep.substr(0, 31)), "");
}

// Unicode Standard Annex 15, figures 3 and 5: the same letter precomposed and taken apart, the angstrom
// sign, and marks in another order.
TEST(FileName, TwinsOfOneLetter) {
  EXPECT_TRUE(file_names_clash("\u00e9t\u00e9.txt", "e\u0301te\u0301.txt"));
  EXPECT_TRUE(file_names_clash("\u00c9t\u00e9.txt", "e\u0301te\u0301.TXT"));
  EXPECT_TRUE(file_names_clash("\u212b", "\u00c5"));
  EXPECT_TRUE(file_names_clash("s\u0323\u0307", "s\u0307\u0323"));
  EXPECT_TRUE(file_names_clash("\u00e9", "e\u0301/a"));
  EXPECT_FALSE(file_names_clash("\u00e9", "e"));
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
