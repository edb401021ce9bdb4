#include "calculate/reading/reading_choice.hpp"

#include "calculate/length/length_sum.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

namespace sheerpole {

namespace {

template <class Value>
bool alike(const Value& one, const Value& other) {
  return one == other;
}

template <class Value>
bool alike(const Sourced<Value>& one, const Sourced<Value>& other) {
  return one.value == other.value && one.provenance.note == other.provenance.note;
}

bool alike(const Particular& one, const Particular& other) {
  return one.name == other.name && one.text == other.text && one.names == other.names;
}

template <class Value>
bool alike(const std::optional<Sourced<Value>>& one, const std::optional<Sourced<Value>>& other) {
  return one.has_value() == other.has_value() && (!one || alike(*one, *other));
}

template <class Value>
bool alike(const std::vector<Value>& one, const std::vector<Value>& other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                    [](const Value& a, const Value& b) { return alike(a, b); });
}

/// A reading that says a length.
struct Candidate {
  std::size_t index = 0;
  const Reading* reading = nullptr;
  std::optional<Length> length; ///< with all corrections; nothing for a mark alone
  Length beside;                ///< of a mark alone: what is added to X
  Length mean;                  ///< as it was read
};

/// The mean as it was read. It stays what it is in a trial of the uncertainty, and with it the choice.
Length as_read(const Reading& reading) {
  Length sum;
  for (const Sourced<Length>& run : reading.lengths())
    sum += run.value;
  return reading.lengths().empty() ? sum : sum / static_cast<double>(reading.lengths().size());
}

std::size_t rank_of_method(const Reading& reading) {
  return static_cast<std::size_t>(reading.method);
}

/// Which of two that are as good as each other is taken. Nothing in it hangs on the order in the file.
bool stands_before(const Candidate& a, const Candidate& b) {
  const auto key = [](const Candidate& one) {
    const Reading& reading = *one.reading;
    return std::tuple(!reading.is_mark_alone(), reading.date.empty(), rank_of_method(reading),
                      -one.mean.metres(), std::string_view(reading.cord), reading.knots.value_or(0),
                      std::string_view(reading.mark), std::string_view(reading.by),
                      std::string_view(reading.note));
  };
  return key(a) < key(b);
}

/// The bound of a mean and of the offsets that go with it; nothing when a run states none.
std::optional<Length> stated_bound(const Reading& reading) {
  Length sum;
  for (const Sourced<Length>& run : reading.lengths()) {
    if (!run.tolerance)
      return std::nullopt;
    sum += *run.tolerance;
  }
  sum = sum / static_cast<double>(reading.lengths().size());
  for (const auto* offset : {&reading.offset, &reading.hoist_offset})
    if (*offset && (*offset)->tolerance)
      sum += *(*offset)->tolerance;
  return sum;
}

/// Two cords that came to one mark: X is the same, so the two differ by what lies beside it.
bool on_one_mark(const Candidate& a, const Candidate& b) {
  return !a.length && !b.length && a.reading->same_mark(*b.reading);
}

Length allowed_apart(const Rig& rig, const Candidate& a, const Candidate& b) {
  if (on_one_mark(a, b))
    return routes_apart(rig);
  if (!a.length || !b.length)
    return Length{};
  const auto of_a = stated_bound(*a.reading);
  const auto of_b = stated_bound(*b.reading);
  return of_a && of_b ? *of_a + *of_b : routes_apart(rig);
}

std::optional<Length> length_apart(const Candidate& taken, const Candidate& other) {
  if (taken.length && other.length)
    return *taken.length - *other.length;
  if (on_one_mark(taken, other))
    return taken.beside - other.beside;
  return std::nullopt;
}

OtherReading as_good(const Rig& rig, const Candidate& taken, const Candidate& other) {
  OtherReading result{other.index, PassedOver::not_comparable, length_apart(taken, other),
                      allowed_apart(rig, taken, other)};
  if (result.apart)
    result.why = magnitude(*result.apart) <= result.allowed + rounding_of_sums ? PassedOver::agrees
                                                                               : PassedOver::contradicts;
  return result;
}

OtherReading passed_over(const Rig& rig, const Candidate& taken, const Candidate& other, PassedOver why) {
  return {other.index, why, length_apart(taken, other), allowed_apart(rig, taken, other)};
}

std::vector<Candidate> candidates_of(const Rig& rig, const Stay& stay) {
  std::vector<Candidate> result;
  for (std::size_t i = 0; i < stay.readings.size(); ++i) {
    const Reading& reading = stay.readings[i];
    if (!reading.says_a_length())
      continue;
    Candidate candidate{i, &reading, {}, {}, {}};
    Length sum;
    for (const Term& term : reading_length(rig, stay, reading).terms)
      sum += term.amount;
    if (reading.is_mark_alone())
      candidate.beside = sum;
    else
      candidate.length = sum;
    result.push_back(candidate);
  }
  return result;
}

} // namespace

const OtherReading* ReadingChoice::contradiction() const {
  for (const PassedOver why : {PassedOver::contradicts, PassedOver::not_comparable})
    for (const OtherReading& other : others)
      if (other.why == why)
        return &other;
  return nullptr;
}

bool word_for_word(const Reading& one, const Reading& other) {
  bool all = true;
  visit_fields(one, [&](const auto& field, const auto& member) {
    if (field.role != FieldRole::identity)
      all = all && alike(member, other.*field.member);
  });
  return all;
}

Length routes_apart(const Rig& rig) {
  return rig.limits.length(Limit::routes_apart)
      .value_or(Length::metres(row_of(Limit::routes_apart).value.value_or(0.0)));
}

ReadingChoice choose_reading(const Rig& rig, const Stay& stay) {
  std::vector<Candidate> all = candidates_of(rig, stay);
  if (all.empty())
    return {};
  // One reading is taken whatever it says; the trials of the uncertainty come here often.
  if (all.size() == 1)
    return {all.front().index, {}};
  for (Candidate& one : all)
    one.mean = as_read(*one.reading);
  std::stable_sort(all.begin(), all.end(), stands_before);
  const bool any_counts =
      std::any_of(all.begin(), all.end(), [](const Candidate& one) { return one.reading->counts; });
  std::string_view latest;
  for (const Candidate& one : all)
    if (!any_counts || one.reading->counts)
      latest = std::max(latest, std::string_view(one.reading->date));
  const Candidate* taken = nullptr;
  const auto why_not = [&](const Candidate& one) -> std::optional<PassedOver> {
    if (any_counts && !one.reading->counts)
      return PassedOver::counted_out;
    if (!one.reading->date.empty() && one.reading->date < latest)
      return PassedOver::older;
    return std::nullopt;
  };
  for (const Candidate& one : all)
    if (taken == nullptr && !why_not(one))
      taken = &one;
  ReadingChoice choice{taken->index, {}};
  std::vector<const Candidate*> rest;
  for (const Candidate& one : all) {
    if (&one == taken)
      continue;
    if (why_not(one))
      rest.push_back(&one);
    else
      choice.others.push_back(as_good(rig, *taken, one));
  }
  std::stable_sort(rest.begin(), rest.end(), [](const Candidate* a, const Candidate* b) {
    return a->reading->date > b->reading->date;
  });
  for (const Candidate* one : rest)
    choice.others.push_back(passed_over(rig, *taken, *one, *why_not(*one)));
  return choice;
}

} // namespace sheerpole
