#pragma once

#include "model/ids.hpp"
#include "model/side.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <cstdint>
#include <initializer_list>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace sheerpole {

class Remark;

// What a remark is filled in with. The words for each are made in wording/, nowhere else: a kind of
// argument that wording/say.cpp forgets does not compile.

/// A share; "50 %", "33.3 %".
struct Share {
  double value = 0.0;
  friend bool operator==(const Share&, const Share&) = default;
};
/// A plain number with all the figures that it has.
struct Number {
  double value = 0.0;
  friend bool operator==(const Number&, const Number&) = default;
};
/// A plain number with so many decimals at the most, idle zeros left out: {1.5, 2} is "1.5".
struct Decimal {
  double value = 0.0;
  int decimals = 2;
  friend bool operator==(const Decimal&, const Decimal&) = default;
};
/// A plain number with just so many decimals: {1.5, 2} is "1.50".
struct Fixed {
  double value = 0.0;
  int decimals = 2;
  friend bool operator==(const Fixed&, const Fixed&) = default;
};
/// A number of things.
struct Count {
  std::int64_t value = 0;
  friend bool operator==(const Count&, const Count&) = default;
};
/// In radians; "9.7 deg".
struct Angle {
  double radians = 0.0;
  friend bool operator==(const Angle&, const Angle&) = default;
};
/// In kelvin; "-10 degC".
struct Temperature {
  double kelvin = 0.0;
  friend bool operator==(const Temperature&, const Temperature&) = default;
};
/// The user's own words, a name or a text as written: they are never translated.
struct Words {
  std::string text;
  friend bool operator==(const Words&, const Words&) = default;
};
/// One of a kind of things, by the word of the language for it: "a jaw", "an eye".
struct OneOf {
  std::string kind;
  friend bool operator==(const OneOf&, const OneOf&) = default;
};
/// How several remarks or names stand one behind the other.
enum class Join : std::uint8_t {
  comma,     ///< "a, b, c"
  semicolon, ///< "a; b; c"
  plus,      ///< "a + b + c"
  and_word,  ///< "a, b and c"
  or_word    ///< "a, b or c"
};
/// Several remarks as one; those that say nothing are left out.
struct Remarks {
  std::vector<Remark> all;
  Join join = Join::comma;
  friend bool operator==(const Remarks& a, const Remarks& b);
};

using RemarkArgument =
    std::variant<Length, Force, Share, Number, Decimal, Fixed, Count, Angle, Temperature, Words, OneOf,
                 WhichEnd, PointId, MaterialId, SpliceId, PartId, StayId, Remarks>;

/// Which table of words a phrase stands in. Each has an enumeration of phrases beside what is calculated
/// and a file in wording/.
enum class PhraseSubject : std::uint8_t {
  none,
  derivation,
  reading,
  length,
  cut,
  bench,
  hang,
  adjuster,
  behaviour,
  geometry,
  joint,
  strength,
  uncertainty,
  change,
  stock,
  tune,
  draft,
  // What the checks say, by the subject of the check; their phrases are in wording/checks/.
  any_check,
  length_check,
  securing_check,
  adjuster_check,
  splice_check,
  geometry_check,
  strength_check,
  evidence_check,
  own_rule
};

/// What a calculation has to say, without a word of English: which phrase, and what fills it in. Phrases of
/// an enumeration E are tied to their table by a function next to it,
/// `constexpr PhraseSubject subject_of(E) { return PhraseSubject::joint; }`.
class Remark {
public:
  /// Says nothing.
  Remark() = default;

  template <class Phrase>
  requires std::is_enum_v<Phrase> Remark(Phrase phrase,
                                         std::initializer_list<RemarkArgument> arguments = {})
      : subject_(subject_of(phrase)), number_(static_cast<std::uint16_t>(phrase)), arguments_(arguments) {}

  template <class Phrase>
  requires std::is_enum_v<Phrase> Remark(Phrase phrase, std::vector<RemarkArgument> arguments)
      : subject_(subject_of(phrase)), number_(static_cast<std::uint16_t>(phrase)),
        arguments_(std::move(arguments)) {}

  bool empty() const { return subject_ == PhraseSubject::none; }
  PhraseSubject subject() const { return subject_; }
  /// The enumerator of the subject's enumeration.
  std::uint16_t number() const { return number_; }
  const std::vector<RemarkArgument>& arguments() const { return arguments_; }

  template <class Phrase>
  bool is(Phrase phrase) const {
    return subject_ == subject_of(phrase) && number_ == static_cast<std::uint16_t>(phrase);
  }

private:
  PhraseSubject subject_ = PhraseSubject::none;
  std::uint16_t number_ = 0;
  std::vector<RemarkArgument> arguments_;

  friend bool operator==(const Remark& a, const Remark& b);
};

inline bool operator==(const Remark& a, const Remark& b) {
  return a.subject_ == b.subject_ && a.number_ == b.number_ && a.arguments_ == b.arguments_;
}

inline bool operator==(const Remarks& a, const Remarks& b) {
  return a.join == b.join && a.all == b.all;
}

} // namespace sheerpole
