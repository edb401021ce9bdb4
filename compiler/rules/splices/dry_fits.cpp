#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/splice_phrases.hpp"

#include <algorithm>

/// The dry fits that the file records.
namespace sheerpole::dry_fits {

namespace {

using P = SpliceCheckPhrase;

/// Whether a dry fit of this stay is recorded.
bool is_recorded(const Rig& rig, StayId stay) {
  return std::any_of(rig.records.begin(), rig.records.end(), [&](const Record& record) {
    return record.kind == RecordKind::dry_fit &&
           std::find(record.stays.begin(), record.stays.end(), stay) != record.stays.end();
  });
}

/// "it hung at 508 mm, 508 mm was worked out"
Remark hung(const FoundHang& found) {
  return {P::it_hung, {found.hung, found.should_hang}};
}

/// "; likely slip: toggle-57 left out, or counted twice (57.15 mm)"
std::string slips(const Rig& rig, const FoundHang& found) {
  Remarks all{{}, Join::or_word};
  for (const HangSlip& slip : found.slips)
    all.all.push_back({P::a_slip, {Remarks{{slip.words}}, slip.off}});
  return all.all.empty() ? std::string() : say(rig, {P::likely_slip, {std::move(all)}});
}

void look_at_found(const Rig& rig, const FoundHang& found, const std::string& name, StayReport& of_stay) {
  if (found.band.mend == HangMend::right) {
    of_stay.pass(hung(found));
    return;
  }
  const bool is_short = found.high > Length{};
  of_stay.find(diagnose("dry-fit-differs",
                        {{"stay", name},
                         {"words", say(rig, hung(found))},
                         {"off", length_text(magnitude(found.high))},
                         {"way", said(is_short ? P::too_short : P::too_long)},
                         {"do", say(rig, words_of(found.band))},
                         {"slips", slips(rig, found)},
                         {"released", said(found.releases() ? P::card_released : P::card_not_released)}})
                   .at(found.place)
                   .about(name));
}

void check_dry_fit_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        if (!stay.hoisted_fit || !is_recorded(rig, stay.stay))
          return;
        const HoistedFit& fit = *stay.hoisted_fit;
        if (const FoundHang* found = fit.latest())
          look_at_found(rig, *found, name, of_stay);
        else
          of_stay.not_checked(fit.not_known.empty() ? Remark(HangPhrase::gap_not_stated) : fit.not_known);
      });
}

} // namespace

const CheckTable checks{CheckRow{"dry-fit-differs", check_dry_fit_differs, {Limit::hang_apart}}};

} // namespace sheerpole::dry_fits
