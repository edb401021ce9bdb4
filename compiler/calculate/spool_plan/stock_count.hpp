#pragma once

#include "model/rig.hpp"

#include <cstdint>
#include <string>

namespace sheerpole {

struct Derived;

/// How many pieces a record of stock states; not stated: one.
std::int64_t pieces_stated(const Record& stock);

/// How many pieces of a stock are made up as they are into stays that name it. Nothing is cut from those,
/// and the record goes on counting them: the stays name it still.
std::int64_t pieces_made_up(const Derived& derived, const std::string& stock);

} // namespace sheerpole
