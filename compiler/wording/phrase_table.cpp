#include "wording/phrase_table.hpp"

#include "base/internal_error.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/evidence_phrases.hpp"
#include "wording/checks/geometry_phrases.hpp"
#include "wording/checks/length_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"
#include "wording/checks/splice_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"
#include "wording/length_phrases.hpp"
#include "wording/phrase.hpp"

namespace sheerpole {

namespace {

std::string_view english_of(const Remark& remark) {
  switch (remark.subject()) {
  case PhraseSubject::none:
    return {};
  case PhraseSubject::derivation:
    return words(static_cast<Derivation>(remark.number()));
  case PhraseSubject::reading:
    return words(static_cast<ReadingPhrase>(remark.number()));
  case PhraseSubject::length:
    return words(static_cast<LengthPhrase>(remark.number()));
  case PhraseSubject::cut:
    return words(static_cast<CutPhrase>(remark.number()));
  case PhraseSubject::bench:
    return words(static_cast<BenchPhrase>(remark.number()));
  case PhraseSubject::hang:
    return words(static_cast<HangPhrase>(remark.number()));
  case PhraseSubject::adjuster:
    return words(static_cast<AdjusterPhrase>(remark.number()));
  case PhraseSubject::behaviour:
    return words(static_cast<BehaviourPhrase>(remark.number()));
  case PhraseSubject::change:
    return words(static_cast<ChangePhrase>(remark.number()));
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
  case PhraseSubject::tune:
    return words(static_cast<TunePhrase>(remark.number()));
  case PhraseSubject::draft:
    return words(static_cast<DraftPhrase>(remark.number()));
  case PhraseSubject::any_check:
    return words(static_cast<AnyCheckPhrase>(remark.number()));
  case PhraseSubject::length_check:
    return words(static_cast<LengthCheckPhrase>(remark.number()));
  case PhraseSubject::securing_check:
    return words(static_cast<SecuringCheckPhrase>(remark.number()));
  case PhraseSubject::adjuster_check:
    return words(static_cast<AdjusterCheckPhrase>(remark.number()));
  case PhraseSubject::splice_check:
    return words(static_cast<SpliceCheckPhrase>(remark.number()));
  case PhraseSubject::geometry_check:
    return words(static_cast<GeometryCheckPhrase>(remark.number()));
  case PhraseSubject::strength_check:
    return words(static_cast<StrengthCheckPhrase>(remark.number()));
  case PhraseSubject::evidence_check:
    return words(static_cast<EvidenceCheckPhrase>(remark.number()));
  case PhraseSubject::own_rule:
    return words(static_cast<OwnRulePhrase>(remark.number()));
  }
  internal_error("a phrase of a subject without a table");
}

/// The name of a subject's table, for those who look a phrase up in another language.
std::string_view table_of(PhraseSubject subject) {
  switch (subject) {
  case PhraseSubject::none:
    return {};
  case PhraseSubject::derivation:
    return "derivation";
  case PhraseSubject::reading:
    return "reading";
  case PhraseSubject::length:
    return "length";
  case PhraseSubject::cut:
    return "cut";
  case PhraseSubject::bench:
    return "bench";
  case PhraseSubject::hang:
    return "hang";
  case PhraseSubject::adjuster:
    return "adjuster";
  case PhraseSubject::behaviour:
    return "behaviour";
  case PhraseSubject::geometry:
    return "geometry";
  case PhraseSubject::joint:
    return "joint";
  case PhraseSubject::strength:
    return "strength";
  case PhraseSubject::uncertainty:
    return "uncertainty";
  case PhraseSubject::change:
    return "change";
  case PhraseSubject::stock:
    return "stock";
  case PhraseSubject::tune:
    return "tune";
  case PhraseSubject::draft:
    return "draft";
  case PhraseSubject::any_check:
    return "any-check";
  case PhraseSubject::length_check:
    return "length-check";
  case PhraseSubject::securing_check:
    return "securing-check";
  case PhraseSubject::adjuster_check:
    return "adjuster-check";
  case PhraseSubject::splice_check:
    return "splice-check";
  case PhraseSubject::geometry_check:
    return "geometry-check";
  case PhraseSubject::strength_check:
    return "strength-check";
  case PhraseSubject::evidence_check:
    return "evidence-check";
  case PhraseSubject::own_rule:
    return "own-rule";
  }
  internal_error("a subject without a table");
}

} // namespace

std::string_view phrase_of(const Remark& remark) {
  const std::string_view english = english_of(remark);
  const Translator* other = spoken_language();
  return other == nullptr ? english : other->phrase(table_of(remark.subject()), remark.number(), english);
}

} // namespace sheerpole
