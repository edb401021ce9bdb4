#include "calculate/cut/end_use.hpp"

#include "calculate/cut/contraction.hpp"
#include "calculate/cut/eye_allowance.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"

#include <optional>
#include <utility>

namespace sheerpole {

namespace {

void add_eye(const LineMaterial& material, const Splice& splice, const LineEnd& end, EndUse& use) {
  EyeAllowance eye = eye_allowance(material, splice, end);
  use.end.note = std::move(eye.note);
  if (eye.term) {
    use.laid.eye_allowance = eye.term->amount;
    use.terms.push_back(std::move(*eye.term));
  } else
    use.missing.push_back(
        {"eye allowance of splice " + splice.name + " at " + end.part->name,
         "wrap the rope round " + end.part->name +
             " and state wrap, or state eye-allowance in the splice, or diameter and throat of the "
             "rope-seat",
         end.part->place});
}

} // namespace

EndUse splice_allowance(const Rig& rig, const LineMaterial& material, const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.part->name;
  use.end.title = end.part->title;
  if (!end.item->splice) {
    use.missing.push_back(
        {"splice at " + end.part->name,
         "name the splice in the stack, for example " + end.part->name + " (splice: long-bury)",
         end.item->place});
    return use;
  }
  const Splice& splice = rig[*end.item->splice];
  use.end.splice = splice.name;
  const std::string where = " " + std::string(name_of(end.where));

  add_eye(material, splice, end, use);
  Term bury = rope_measure_term("bury" + where, splice.bury, material);
  bury.marked_off = true;
  use.terms.push_back(bury);
  std::optional<Term> spare;
  if (end.item->spare_bury) {
    spare = Term{"spare bury" + where, end.item->spare_bury->value, "", end.item->spare_bury->provenance};
    spare->marked_off = true;
    use.terms.push_back(*spare);
  }
  use.laid.buried = bury.amount + (spare ? spare->amount : Length{});
  if (splice.tail_to_trim) {
    use.terms.push_back(rope_measure_term("tail to trim" + where, *splice.tail_to_trim, material));
    use.terms.back().marked_off = true;
    use.laid.trimmed = use.terms.back().amount;
  }
  if (const Particular* taper = find_fact(splice.particulars, "taper-over"))
    use.laid.tapered =
        RopeMeasure{taper->value.value.si, taper->value.value.dimension == dimension::rope_diameters}.at(
            material.diameter.value);
  if (const End* seat = end.of_type("rope-seat"))
    if (const EndDimension* diameter = seat->find("diameter"), *throat = seat->find("throat");
        diameter != nullptr && throat != nullptr)
      use.laid.crown_to_throat = diameter->length.value / 2.0 + throat->length.value;
  const Contraction contraction = contraction_of(rig, material, splice);
  if (contraction.share) {
    for (Term& term : contraction_terms(contraction, bury, spare ? &*spare : nullptr, end.where)) {
      use.laid.contraction += term.amount;
      use.terms.push_back(std::move(term));
    }
  } else if (!contraction.left_out) {
    use.missing.push_back(
        {"contraction of splice " + splice.name,
         fact_text(splice.particulars, "contraction-rule").empty()
             ? "make a test splice on this rope, measure how much shorter it got and state contraction"
             : "the rule equals-first-creep is for heat-set rope only; make a test splice on this rope",
         splice.place});
  }
  if (!contraction.note.empty())
    use.end.note += (use.end.note.empty() ? "" : "; ") + contraction.note;
  return use;
}

EndUse insertion(const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.part->name;
  use.end.title = end.part->title;
  const End* socket = end.of_type("wire-socket");
  const EndDimension* depth = socket == nullptr ? nullptr : socket->find("inserted");
  if (depth == nullptr) {
    use.missing.push_back({"insertion depth of " + end.part->name,
                           "state `" + std::string(end.where == WhichEnd::upper ? "lower" : "upper") +
                               ": wire-socket (inserted: … mm)` in " + end.part->name +
                               ", from its maker or with a depth gauge",
                           socket != nullptr && socket->place ? *socket->place : end.part->place});
    return use;
  }
  use.laid.inserted = depth->length.value;
  use.terms.push_back(
      {"inserted " + std::string(name_of(end.where)), depth->length.value, "", depth->length.provenance});
  return use;
}

} // namespace sheerpole
