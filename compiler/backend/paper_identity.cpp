#include "backend/paper_identity.hpp"

#include "backend/paper_words.hpp"
#include "base/byte_text.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t signs_of_digest = 8;

} // namespace

std::string rig_digest(const CheckedRig& checked) {
  std::string all;
  for (std::uint32_t i = 0; i < checked.sources().size(); ++i)
    all += checked.sources()[SourceId{i}].file_bytes();
  // Lengths restated for a shop are other lengths of the same files.
  const auto& differences = checked.rig().differences;
  const auto shop = std::find_if(differences.begin(), differences.end(), [](const Difference& one) {
    return one.origin == Difference::Origin::shop;
  });
  if (shop != differences.end())
    all += shop->origin_name;
  return sha256(all).substr(0, signs_of_digest);
}

std::string identity_words(const CheckedRig& checked) {
  return boat_title(checked) + ", " + edition_words(checked);
}

std::string edition_words(const CheckedRig& checked) {
  const Boat& boat = checked.rig().boat;
  const std::string revision = fact_text(boat.particulars, fact_names.revision);
  return "revision " + (revision.empty() ? "not stated" : revision) + ", " +
         (boat.report_date.empty() ? "report date not stated" : boat.report_date) + ", rig " +
         rig_digest(checked);
}

std::string identity_words(const std::vector<const CheckedRig*>& boats) {
  return joined(boats, "; ", [](const CheckedRig* boat) { return identity_words(*boat); });
}

} // namespace sheerpole
