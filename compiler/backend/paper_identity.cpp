#include "backend/paper_identity.hpp"

#include "backend/paper_words.hpp"
#include "calculate/change/stay_inputs.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/papers/papers_words.hpp"

namespace sheerpole {

std::string identity_words(const CheckedRig& checked) {
  return boat_title(checked) + ", " + edition_words(checked);
}

std::string edition_words(const CheckedRig& checked) {
  const Boat& boat = checked.rig().boat;
  const std::string revision = fact_text(boat.particulars, fact_names.revision);
  return say(PapersPhrase::revision_rig, (revision.empty() ? say(PapersPhrase::not_stated) : revision),
             (boat.report_date.empty() ? say(PapersPhrase::report_date_not_stated) : boat.report_date),
             led_by(", ", layer_words(checked.rig().edition)), checked.digest());
}

std::string layer_words(const Edition& edition) {
  return led_by(say(PapersPhrase::as), edition.layer) +
         (edition.layer.empty() ? "" : led_by(" ", edition.date));
}

std::string layer_after(const Rig& rig, const Stay& stay, const std::string& date) {
  Edition after;
  for (const Difference& difference : rig.differences) {
    if (difference.origin != Difference::Origin::layer)
      continue;
    const Record* layer = find_record(rig, RecordKind::layer, difference.origin_name);
    const std::string of_layer = layer == nullptr ? "" : fact_text(layer->facts, fact_names.date);
    const bool later = of_layer.empty() ? difference.origin_name == name_of(PieceStage::fitted)
                                        : of_layer > date; // ISO 8601 days are in order as texts
    if (later && of_layer >= after.date && rests_on(rig, stay, difference.subject))
      after = {difference.origin_name, of_layer};
  }
  return layer_words(after);
}

std::string identity_words(const std::vector<const CheckedRig*>& boats) {
  return joined(boats, "; ", [](const CheckedRig* boat) { return identity_words(*boat); });
}

} // namespace sheerpole
