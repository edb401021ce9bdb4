#include "wording/phrase_table.hpp"

#include "base/internal_error.hpp"
#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view phrase_of(const Remark& remark) {
  switch (remark.subject()) {
  case PhraseSubject::none:
    return {};
  case PhraseSubject::reading:
    return words(static_cast<ReadingPhrase>(remark.number()));
  case PhraseSubject::length:
    return words(static_cast<LengthPhrase>(remark.number()));
  case PhraseSubject::cut:
    return words(static_cast<CutPhrase>(remark.number()));
  case PhraseSubject::bench:
    return words(static_cast<BenchPhrase>(remark.number()));
  case PhraseSubject::adjuster:
    return words(static_cast<AdjusterPhrase>(remark.number()));
  case PhraseSubject::behaviour:
    return words(static_cast<BehaviourPhrase>(remark.number()));
  case PhraseSubject::change:
    return words(static_cast<ChangePhrase>(remark.number()));
  // As each subject gets its table: `case PhraseSubject::joint: return
  // words(static_cast<JointPhrase>(remark.number()));`
  case PhraseSubject::geometry:
  case PhraseSubject::joint:
  case PhraseSubject::strength:
  case PhraseSubject::uncertainty:
  case PhraseSubject::stock:
  case PhraseSubject::check:
    break;
  }
  internal_error("a phrase of a subject without a table");
}

} // namespace sheerpole
