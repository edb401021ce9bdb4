#include "backend/paper_identity.hpp"

#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

namespace sheerpole {

std::string identity_words(const CheckedRig& checked) {
  return boat_title(checked) + ", " + edition_words(checked);
}

std::string edition_words(const CheckedRig& checked) {
  const Boat& boat = checked.rig().boat;
  const std::string revision = fact_text(boat.particulars, fact_names.revision);
  return "revision " + (revision.empty() ? "not stated" : revision) + ", " +
         (boat.report_date.empty() ? "report date not stated" : boat.report_date) + ", rig " +
         checked.digest();
}

std::string identity_words(const std::vector<const CheckedRig*>& boats) {
  return joined(boats, "; ", [](const CheckedRig* boat) { return identity_words(*boat); });
}

} // namespace sheerpole
