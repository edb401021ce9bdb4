#include "calculate/spool_plan/stock_count.hpp"

#include "calculate/cut/order_length.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <charconv>

namespace sheerpole {

std::int64_t pieces_stated(const Record& stock) {
  std::int64_t count = 1;
  // A count is kept as text.
  const std::string pieces = fact_text(stock.facts, fact_names.pieces);
  std::from_chars(pieces.data(), pieces.data() + pieces.size(), count);
  return count;
}

std::int64_t pieces_made_up(const Derived& derived, const std::string& stock) {
  std::int64_t made = 0;
  for (const DerivedStay& stay : derived.stays)
    for (const Piece& piece : stay.pieces)
      if (made_of_what_is_there(piece) && piece.in_hand->stock == stock)
        ++made;
  return made;
}

} // namespace sheerpole
