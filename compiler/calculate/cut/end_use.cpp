#include "calculate/cut/end_use.hpp"

#include "calculate/cut/contraction.hpp"
#include "calculate/cut/cut_phrase.hpp"
#include "calculate/cut/eye_allowance.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/fact_name.hpp"

#include <optional>
#include <utility>

namespace sheerpole {

namespace {

/// Further apart than so many diameters of the rope, the shape of the seat and the eye do not belong to
/// each other. What a splice states may have been measured round a part a little larger or smaller; beyond
/// this it was measured round something else. Source: choice of the project, no source.
constexpr double most_of_wrap = 1.0;
constexpr double most_of_splice = 3.0;

/// An eye that the shape of its seat contradicts is boxed on the card; far apart, it blocks.
void compare_eye(const Rig& rig, const SplicedEnd& end, EndUse& use) {
  const auto ways = eye_ways(end);
  const auto limit = rig.limits.length(Limit::eye_ways_apart);
  if (!ways || !limit)
    return;
  const Length apart = magnitude(ways->stated - ways->geometry);
  constexpr Length rounding = Length::millimetres(0.001);
  if (apart > *limit + rounding)
    use.end.boxed = {ways->wrapped ? CutPhrase::eye_ways_apart : CutPhrase::eye_allowance_apart,
                     {end.end.item->part, ways->stated, ways->geometry, apart}};
  if (apart <= end.rope->diameter.value * (ways->wrapped ? most_of_wrap : most_of_splice) + rounding)
    return;
  use.blocked.push_back(
      {{ways->wrapped ? CutPhrase::eye_ways_block : CutPhrase::eye_allowance_block,
        {end.end.item->part, ways->stated, ways->geometry}},
       {ways->wrapped ? CutPhrase::eye_ways_mend : CutPhrase::wrap_this_part_mend, {end.end.item->part}},
       ways->place});
}

void add_eye(const LineMaterial& material, const Splice& splice, const LineEnd& end, EndUse& use) {
  EyeAllowance eye = eye_allowance(material, splice, end);
  use.end.notes = std::move(eye.notes);
  if (eye.term) {
    use.laid.eye_allowance = eye.term->amount;
    use.terms.push_back(std::move(*eye.term));
  } else
    use.missing.push_back({{CutPhrase::eye_allowance_missing, {*end.item->splice, end.item->part}},
                           {CutPhrase::eye_allowance_mend, {end.item->part}},
                           end.part->place});
}

/// The contraction of one bury; what is missing of it.
void add_contraction(const Rig& rig, const LineMaterial& material, const Splice& splice, const Term& bury,
                     const Term* spare, EndUse& use) {
  Contraction contraction = contraction_of(rig, material, splice);
  use.end.notes.insert(use.end.notes.end(), contraction.notes.begin(), contraction.notes.end());
  use.end.by_first_creep = contraction.by_first_creep;
  if (contraction.by_first_creep && contraction.share)
    use.end.shortens_until_set =
        (bury.amount + (spare != nullptr ? spare->amount : Length{})) * contraction.share->value;
  if (contraction.by_first_creep)
    return;
  if (!contraction.share) {
    use.missing.push_back({{CutPhrase::contraction_missing, {Words{splice.name}}},
                           !fact_text(splice.particulars, fact_names.contraction_rule).empty()
                               ? CutPhrase::rule_for_heat_set_only
                           : material.construction.heat_set ? CutPhrase::contraction_mend_or_rule
                                                            : CutPhrase::contraction_mend,
                           splice.place});
    return;
  }
  for (Term& term : contraction_terms(contraction, bury, spare)) {
    use.laid.contraction += term.amount;
    use.terms.push_back(std::move(term));
  }
}

} // namespace

EndUse splice_allowance(const Rig& rig, const LineMaterial& material, const LineEnd& end,
                        const std::optional<Term>& kept) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.item->part;
  if (!end.item->splice) {
    use.missing.push_back({{CutPhrase::splice_missing, {end.item->part}},
                           {CutPhrase::splice_mend, {end.item->part}},
                           end.item->place});
    return use;
  }
  const Splice& splice = rig[*end.item->splice];
  use.end.splice = end.item->splice;
  // Eye, bury, spare, tail, and the contraction with what of it is the spare's and what is given back: cuts
  // are worked out by the thousand in trials, and terms are long.
  use.terms.reserve(7);

  add_eye(material, splice, end, use);
  compare_eye(rig, {.rope = &material, .end = end, .splice = &splice}, use);
  Term bury = rope_measure_term(TermKind::bury, end.where, splice.bury, material);
  use.terms.push_back(bury);
  std::optional<Term> spare = kept;
  if (end.item->spare_bury)
    spare = Term{TermKind::spare_bury, end.item->spare_bury->value, end.item->spare_bury->provenance,
                 end.where};
  if (spare)
    use.terms.push_back(*spare);
  use.laid.buried = bury.amount + (spare ? spare->amount : Length{});
  if (splice.tail_to_trim) {
    use.terms.push_back(
        rope_measure_term(TermKind::tail_to_trim, end.where, *splice.tail_to_trim, material));
    use.laid.trimmed = use.terms.back().amount;
  }
  if (const Particular* taper = find_fact(splice.particulars, fact_names.taper_over))
    use.laid.tapered =
        RopeMeasure{taper->value.value.si, taper->value.value.dimension == dimension::rope_diameters}.at(
            material.diameter.value);
  if (const End* seat = end.of_type(EndType::rope_seat))
    if (const EndDimension* diameter = seat->find(EndDimensionName::diameter),
        *throat = seat->find(EndDimensionName::throat);
        diameter != nullptr && throat != nullptr)
      use.laid.crown_to_throat = diameter->length.value / 2.0 + throat->length.value;
  add_contraction(rig, material, splice, bury, spare ? &*spare : nullptr, use);
  return use;
}

EndUse insertion(const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.item->part;
  const End* socket = end.of_type(EndType::wire_socket);
  const EndDimension* depth = socket == nullptr ? nullptr : socket->find(EndDimensionName::inserted);
  if (depth == nullptr) {
    const bool eye = wire_end(end.part->kind) != WireEnd::terminal;
    const bool upper = end.where == WhichEnd::upper;
    use.missing.push_back(
        {{eye ? CutPhrase::wire_of_eye_missing : CutPhrase::insertion_missing, {end.item->part}},
         {eye ? (upper ? CutPhrase::wire_of_eye_mend_upper : CutPhrase::wire_of_eye_mend_lower)
              : (upper ? CutPhrase::insertion_mend_upper : CutPhrase::insertion_mend_lower),
          {end.item->part}},
         socket != nullptr && socket->place ? *socket->place : end.part->place});
    return use;
  }
  use.laid.inserted = depth->length.value;
  use.laid.is_loop = wire_end(end.part->kind) != WireEnd::terminal;
  use.terms.push_back({TermKind::inserted, depth->length.value, depth->length.provenance, end.where});
  return use;
}

} // namespace sheerpole
