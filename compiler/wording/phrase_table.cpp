#include "wording/phrase_table.hpp"

#include "base/internal_error.hpp"

namespace sheerpole {

std::string_view phrase_of(const Remark& remark) {
  switch (remark.subject()) {
  case PhraseSubject::none:
    return {};
  case PhraseSubject::joint:
    return words(static_cast<JointPhrase>(remark.number()));
  case PhraseSubject::strength:
    return words(static_cast<StrengthPhrase>(remark.number()));
  case PhraseSubject::geometry:
    return words(static_cast<GeometryPhrase>(remark.number()));
  case PhraseSubject::uncertainty:
    return words(static_cast<UncertaintyPhrase>(remark.number()));
  case PhraseSubject::stock:
    return words(static_cast<StockPhrase>(remark.number()));
  case PhraseSubject::reading:
  case PhraseSubject::length:
  case PhraseSubject::cut:
  case PhraseSubject::bench:
  case PhraseSubject::adjuster:
  case PhraseSubject::behaviour:
  case PhraseSubject::change:
  case PhraseSubject::check:
    break;
  }
  internal_error("a phrase of a subject without a table");
}

} // namespace sheerpole
