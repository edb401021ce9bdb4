#include "rules/splices/look_at_splices.hpp"

#include <set>
#include <utility>

namespace sheerpole {

void look_at_splices(const Rig& rig, const Derived& derived, CheckReport& report, SpliceKey key,
                     const LookAtSplice& look) {
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        std::set<std::pair<const void*, const void*>> seen; // asked, never gone through
        for (const SplicedEnd& end : spliced_ends(rig, stay))
          if (const void* thing = key(end); thing != nullptr && seen.insert({thing, end.rope}).second)
            look(end, stay, name, of_stay);
      });
}

} // namespace sheerpole
