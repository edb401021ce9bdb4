#include "backend/order/order_items.hpp"
#include "backend/paper_words.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/order_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

/// Lengths and counts of an order in words.
namespace sheerpole {

std::string open_words(const OpenLength& open) {
  const std::string size = format_fixed(static_cast<double>(std::abs(open.plus_mm)) / 1000.0, 3) + " m";
  std::string words = with_x(true, open.plus_mm, size, x_of_stay(open.of));
  if (open.times == 2)
    words += say(OrderPhrase::twice);
  else if (open.times > 2)
    words += say(OrderPhrase::times, open.times);
  return words;
}

std::string_view estimate_words(EstimateBy by) {
  switch (by) {
  case EstimateBy::path:
    return say(OrderPhrase::points_its_path);
  case EstimateBy::stated:
    return say(OrderPhrase::its_stated_length);
  case EstimateBy::statement:
  case EstimateBy::nothing:
    break;
  }
  return say(OrderPhrase::estimate_stay);
}

std::string x_taken_words(const std::string& stay, const OrderLength& length) {
  return say(OrderPhrase::x_taken_as_m_by,
             open_words({stay, 1, static_cast<long>(std::ceil(length.plus.millimetres() - 1e-6))}),
             format_fixed(length.x.metres(), 2), estimate_words(length.by));
}

std::string needed_text(const OrderItem& item) {
  const std::string open = joined(item.open, say(OrderPhrase::and_word), open_words);
  if (item.needed == 0)
    return open.empty() ? say(OrderPhrase::nothing) : open;
  return amount_text(item, item.needed) + led_by(say(OrderPhrase::and_word), open);
}

std::string to_order_text(const OrderItem& item) {
  if (item.nothing_to_order())
    return say(OrderPhrase::nothing);
  std::string open = joined(item.open, say(OrderPhrase::and_word), open_words);
  if (!open.empty() && item.margin_share > 0.0)
    open += item.margin_share == 1.0 ? say(OrderPhrase::and_same_again)
                                     : say(OrderPhrase::and_more, format_number(item.margin_share * 100.0));
  if (item.to_order() == 0)
    return open;
  return amount_text(item, item.to_order()) + led_by(say(OrderPhrase::and_word), open);
}

std::string amount_text(const OrderItem& item, long amount) {
  return item.in_metres ? fmt::format("{}.{} m", amount / 10, amount % 10) : std::to_string(amount);
}

} // namespace sheerpole
