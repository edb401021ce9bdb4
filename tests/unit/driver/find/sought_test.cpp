#include "driver/find/find_in_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::sought_test {
namespace {

Sought sought(const std::string& text) {
  return read_sought(text).value();
}

TEST(Sought, ASizeIsOfItsSystem) {
  EXPECT_TRUE(is_sought_size(sought("1/2 in"), parse_named_size("1/2\"").value()));
  EXPECT_FALSE(is_sought_size(sought("1/2 in"), parse_named_size("12.7 mm").value()));
  EXPECT_TRUE(is_sought_size(sought("12 mm"), parse_named_size("12.0 mm").value()));
  EXPECT_FALSE(is_sought_size(sought("5/16 in"), parse_named_size("8 mm").value()));
  EXPECT_FALSE(is_sought_size(sought("twelve"), parse_named_size("12 mm").value()));
}

// Diameters and pitches: ASME B1.1 (1/2-20 UNF, 1/2-13 UNC), ISO 261 (M12 coarse 1.75, fine 1.25).
TEST(Sought, AThreadIsFoundByItselfAndByItsSize) {
  const auto thread = [](const char* name) { return parse_thread(name).value(); };
  EXPECT_TRUE(is_sought_thread(sought("M12"), thread("M12 x 1.75")));
  EXPECT_FALSE(is_sought_thread(sought("M12"), thread("M12 x 1.25")));
  EXPECT_TRUE(is_sought_thread(sought("12 mm"), thread("M12 x 1.25")));
  EXPECT_TRUE(is_sought_thread(sought("1/2 in"), thread("1/2-20 UNF")));
  EXPECT_TRUE(is_sought_thread(sought("1/2 in"), thread("1/2-13 UNC")));
  EXPECT_FALSE(is_sought_thread(sought("1/2-20"), thread("1/2-13 UNC")));
  EXPECT_FALSE(is_sought_thread(sought("12.7 mm"), thread("1/2-20 UNF")));
}

TEST(Sought, WordsInAnyOrderAndWhateverTheirLetters) {
  EXPECT_TRUE(has_sought_words(sought("SHROUD, cap"), "Cap shroud, continuous"));
  EXPECT_FALSE(has_sought_words(sought("shrouds"), "Cap shroud"));
  EXPECT_FALSE(has_sought_words(sought("cap backstay"), "Cap shroud"));
  EXPECT_FALSE(has_sought_words(sought("9 mm"), "Thimble for 9 mm")); // a size is no words
  EXPECT_TRUE(has_sought_words(sought("wante bâbord"), "Wante bâbord"));
  EXPECT_TRUE(is_sought(sought("Coil 7"), "coil 7"));
  EXPECT_FALSE(is_sought(sought("coil 7"), "coil 70"));
}

TEST(Sought, Days) {
  EXPECT_EQ(sought("before 2016-05-01").before->count, parse_day("2016-05-01")->count);
  EXPECT_EQ(sought("older than 2016-05-01").before->count, parse_day("2016-05-01")->count);
  EXPECT_FALSE(read_sought("before 2016-02-30").ok());
  EXPECT_FALSE(read_sought("before noon").ok());
  EXPECT_FALSE(sought("beforehand").before);
}

TEST(Sought, NothingToLookFor) {
  EXPECT_FALSE(read_sought("").ok());
  EXPECT_FALSE(read_sought(" - ").ok());
}

} // namespace
} // namespace sheerpole::sought_test
