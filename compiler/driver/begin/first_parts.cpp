#include "driver/begin/first_parts.hpp"

namespace sheerpole {

std::string_view first_parts() {
  return R"(# Parts to begin with: measure your own and put them in their place.
tang first-tang "Mast tang" {
}

chainplate first-plate "Chainplate" {
}

wire first-wire "Wire, size to be looked up" {
  construction: "1x19"
  size: "6 mm" assumed "look up your own"
}

terminal first-eye "Eye terminal" {
  length: 60 mm assumed "from pin to where the wire comes out: measure"
  lower: wire-socket (inserted: 50 mm assumed "how far the wire goes in: measure")
}

turnbuckle first-screw "Turnbuckle" {
  shortest: 240 mm assumed "fully closed, pin to pin: measure"
  longest: 360 mm assumed "open to the last thread to be used: measure"
  upper: wire-socket (inserted: 50 mm assumed "how far the wire goes in: measure")
}
)";
}

} // namespace sheerpole
