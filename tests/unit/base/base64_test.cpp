#include "base/byte_text.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::base64_test {
namespace {

TEST(Base64, TestVectorsOfTheStandard) { // RFC 4648 section 10
  for (const auto& [bytes, text] : {std::pair{"", ""},
                                    {"f", "Zg=="},
                                    {"fo", "Zm8="},
                                    {"foo", "Zm9v"},
                                    {"foob", "Zm9vYg=="},
                                    {"fooba", "Zm9vYmE="},
                                    {"foobar", "Zm9vYmFy"}}) {
    EXPECT_EQ(to_base64(bytes), text);
    EXPECT_EQ(from_base64(text), bytes);
  }
}

TEST(Base64, WhatIsNotOfTheAlphabetIsRefused) { // RFC 4648 sections 3.1 to 3.5
  for (const char* text :
       {"Zg", "Zg=", "Zm9v\n", "Zm 9", "Z-_v", "=", "====", "Zg==Zg==", "Z===", "Zh==", "Zm9="})
    EXPECT_EQ(from_base64(text), std::nullopt) << text;
}

RC_GTEST_PROP(Base64, ComesBack, (const std::string& bytes)) {
  RC_ASSERT(from_base64(to_base64(bytes)) == bytes);
}

} // namespace
} // namespace sheerpole::base64_test
