#include "bench/generated_boat.hpp"

#include <fmt/format.h>

#include <iterator>

namespace sheerpole::bench {

std::string generated_boat(std::size_t stays) {
  std::string text = R"(language 1

boat "Generated" {
  beam: 3.20 m drawn
  pair-tolerance: 1 mm
}

rope hmpe-9 "HMPE 9 mm" {
  construction: "12-strand HMPE heat-set"
  size: "9 mm"
}

splice long-bury "Long bury" {
  bury: 72 d practice "common practice, no source"
  eye-allowance: 12 d measured "test splice"
  contraction: 8 % measured "test splice"
}

tang tang-10 { lower: jaw (gap: 12 mm, pin: "10 mm") }

chainplate plate-10 { upper: eye (hole: 10.3 mm, thickness: 8 mm) }
)";
  auto out = std::back_inserter(text);
  for (std::size_t i = 1; i <= stays; ++i) {
    fmt::format_to(out, R"(
points {{
  tang-at-{0} "Tang {0}": (-0.050, 0.070, 12.620) m drawn "sail plan"
  tip-{0} "Spreader tip {0}": (-0.324, 0.8{1:02}, 9.130) m drawn
  plate-at-{0} "Chainplate {0}": (-0.620, 1.4{1:02}, 1.100) m measured "tape"
}}

# the thimble of stay {0}
thimble thimble-{0} "Thimble {0}" {{
  length: 16 mm ± 0.5 mm drawn
  upper: eye (hole: 12 mm, width: 18 mm)
  lower: rope-seat (diameter: 28 mm, throat: 38 mm)
}}

lashing lashing-{0} {{
  shortest: 2-3/8 in
  longest: 260 mm
}}

stay stay-{0} "Stay {0}" {{
  path: tang-at-{0} > tip-{0} free > plate-at-{0}
  line: hmpe-9
  stack {{
    tang-10
    thimble-{0} (splice: long-bury)
    line
    thimble-{0} (splice: long-bury, spare-bury: 120 mm)
    lashing-{0} (gap: 160 mm, passes: 6)
    plate-10
  }}
}}
)",
                   i, i % 90);
  }
  return text;
}

} // namespace sheerpole::bench
