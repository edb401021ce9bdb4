#include "base/byte_text.hpp"

#include <gtest/gtest.h>

namespace sheerpole::sha256_test {
namespace {

// NIST, Examples with Intermediate Values, SHA-256: one block "abc", two blocks, and the empty message (the
// digests from memory of these pages).
TEST(Sha256, GivesTheDigestsOfThePublishedExamples) {
  EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

} // namespace
} // namespace sheerpole::sha256_test
