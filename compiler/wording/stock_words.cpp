#include "base/internal_error.hpp"
#include "calculate/spool_plan/spool_order.hpp"
#include "wording/phrase_table.hpp"

namespace sheerpole {

std::string_view words(StockPhrase phrase) {
  switch (phrase) {
  case StockPhrase::ways_differ:
    return "ways differ: find out why before it is cut";
  case StockPhrase::links:
    return "{} links of {}";
  case StockPhrase::not_complete:
    return "its cut length is not complete: {}";
  case StockPhrase::missing:
    return "{} is missing";
  case StockPhrase::no_length_yet:
    return "a part of its stack has no length yet";
  case StockPhrase::no_estimate:
    return "its length is X, and the stay states no estimate to order line by";
  case StockPhrase::nothing_left:
    return "nothing is left of its length";
  case StockPhrase::too_long:
    return "it is longer than 100 km";
  case StockPhrase::plan_full:
    return "the plan has as many pieces as it can hold";
  case StockPhrase::in_hand:
    return "it is made of what is in hand for it, {}";
  case StockPhrase::on_record:
    return "it is on record as cut; to make it anew, take its `piece` records out";
  case StockPhrase::taken_before:
    return "an earlier plan has taken it from this stock, and it is not taken twice; to cut it once more "
           "take "
           "`taken-for` out of `cutting`";
  }
  internal_error("a phrase of stock that has no words");
}

} // namespace sheerpole
