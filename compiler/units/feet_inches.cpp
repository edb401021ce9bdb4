#include "units/feet_inches.hpp"

namespace sheerpole {

namespace {
using Kind = QuantityError::Kind;
constexpr double inches_per_foot = 12.0;
} // namespace

std::optional<QuantityError::Kind> scan_inches_after_feet(TextCursor& cursor, const ScannedNumber& feet,
                                                          FeetMark mark, double& inches) {
  inches = feet.value * inches_per_foot;
  if (cursor.at_end())
    return std::nullopt;
  // 38'-7 3/8" is how drawings write it. After the word the same hyphen could be meant as a minus: 38 ft-7
  // in.
  if (mark == FeetMark::word || !cursor.take('-'))
    cursor.skip_blanks();

  ScannedNumber rest;
  const auto error = scan_number(cursor, rest);
  if (error && error != Kind::improper_mixed)
    return error;
  inches += rest.value;

  // The mark before the size: in 11'642 mm the apostrophe was no feet.
  const bool blank = cursor.skip_blanks();
  if (cursor.at_end())
    return Kind::missing_unit;
  // Behind a blank the straight mark begins a text in quotes.
  if (blank && cursor.peek() == '"')
    return Kind::malformed;
  TextCursor ahead = cursor;
  if ((!ahead.take_inch_mark() && !ahead.take("in")) || !ahead.at_end())
    return error ? error : Kind::unknown_unit;
  cursor = ahead;
  if (error || rest.value >= inches_per_foot || feet.form != ScannedNumber::Form::whole)
    return Kind::improper_mixed;
  if (inches > largest_number)
    return Kind::too_large;
  return std::nullopt;
}

} // namespace sheerpole
