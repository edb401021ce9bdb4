#include "model/construction.hpp"

#include <gtest/gtest.h>

namespace sheerpole::construction_test {

TEST(Construction, HeatSetIsReadOnceAndADenialCounts) {
  for (const char* text : {"12-strand HMPE heat-set", "12-strand HMPE, heat set", "HMPE heatset 12-strand",
                           "HMPE, no stretch, heat-set"})
    EXPECT_TRUE(read_construction(text).heat_set) << text;
  for (const char* text : {"12-strand HMPE, not heat-set", "12-strand HMPE", "12-strand HMPE, non-heat-set",
                           "12-strand HMPE, not yet heat-set", "12-strand HMPE, heat-treated",
                           "12-strand HMPE, heat-set: no", "12-strand HMPE (never heat set)"})
    EXPECT_FALSE(read_construction(text).heat_set) << text;
}

TEST(Construction, StrandsFibreAndLayOfRope) {
  const Construction twelve = read_construction("12-strand HMPE heat-set");
  EXPECT_EQ(twelve.strands, 12);
  EXPECT_EQ(twelve.fibre, Fibre::hmpe);
  EXPECT_EQ(twelve.lay, Lay::braided);
  EXPECT_EQ(twelve.hollow, true);
  const Construction three = read_construction("3-strand polyester");
  EXPECT_EQ(three.lay, Lay::laid);
  EXPECT_EQ(three.hollow, false);
  EXPECT_EQ(three.fibre, Fibre::polyester);
  EXPECT_EQ(read_construction("double braid polyester").lay, Lay::double_braid);
  EXPECT_EQ(read_construction("double braid polyester").hollow, false);
  EXPECT_EQ(read_construction("12-strand HMPE with polyester cover").hollow, false);
}

TEST(Construction, WireAndRod) {
  const Construction wire = read_construction("1x19");
  EXPECT_EQ(wire.strands, 1);
  EXPECT_EQ(wire.wires_in_strand, 19);
  EXPECT_EQ(wire.lay, Lay::strand);
  EXPECT_EQ(read_construction("7 x 7 galvanised").wires_in_strand, 7);
  EXPECT_EQ(read_construction("rod").lay, Lay::solid);
}

TEST(Construction, WhatATextDoesNotSayStaysUnknown) {
  const Construction none = read_construction("");
  EXPECT_FALSE(none.strands);
  EXPECT_FALSE(none.hollow);
  EXPECT_EQ(none.lay, Lay::unknown);
  EXPECT_EQ(none.fibre, Fibre::unknown);
}

TEST(Construction, AnotherStrandCountFibreOrHeatSettingIsAnotherConstruction) {
  const Construction set = read_construction("12-strand HMPE heat-set");
  EXPECT_TRUE(is_same_construction(set, read_construction("HMPE, 12-strand, heat set")));
  EXPECT_FALSE(is_same_construction(set, read_construction("12-strand HMPE")));
  EXPECT_FALSE(is_same_construction(set, read_construction("8-strand HMPE heat-set")));
  EXPECT_FALSE(is_same_construction(set, read_construction("12-strand polyester heat-set")));
  EXPECT_FALSE(is_same_construction(read_construction("1x19"), read_construction("7x19")));
  EXPECT_FALSE(is_same_construction(read_construction("1x19"), read_construction("1x19 compacted")));
  EXPECT_FALSE(is_same_construction(read_construction("as the old one"), read_construction("another")));
}

} // namespace sheerpole::construction_test
