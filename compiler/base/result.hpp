#pragma once

#include <utility>
#include <variant>

namespace sheerpole {

/// A value, or the reason why there is none. For helpers that know no place in a file; user mistakes with a
/// place go to the DiagnosticSink instead.
template <class Value, class Error>
class Result {
public:
  Result(Value value) : state_(std::in_place_index<0>, std::move(value)) {}
  Result(Error error) : state_(std::in_place_index<1>, std::move(error)) {}

  bool ok() const { return state_.index() == 0; }
  explicit operator bool() const { return ok(); }
  const Value& value() const { return std::get<0>(state_); }
  Value& value() { return std::get<0>(state_); }
  const Error& error() const { return std::get<1>(state_); }

private:
  std::variant<Value, Error> state_;
};

} // namespace sheerpole
