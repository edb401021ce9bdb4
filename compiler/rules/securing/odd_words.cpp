#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

/// Texts on how something is held that are in none of the words of the trade.
namespace sheerpole::odd_words {

namespace {

using Any = AnyCheckPhrase;

/// Says that a text is odd, with the nearest word of the trade to put in its place. Without one the file
/// should say whether there is anything at all.
void look_at(const Rig& rig, const StatedFact& held, const Remark& what, DiagnosticBuilder&& finding,
             const std::string& name, StayReport& report) {
  if (!held.odd) {
    report.pass({Any::of_something, {Remarks{{what}}, Words{held.how.text}}});
    return;
  }
  if (held.place) {
    const std::string& near = held.odd->suggestion;
    const std::string title =
        near.empty() ? said(Any::write_none) : say(rig, {Any::write_instead, {Words{near}}});
    finding = std::move(finding)
                  .at(*held.place)
                  .edit(*held.place, "\"" + (near.empty() ? said(Any::none_at_all) : near) + "\"", title);
  }
  find_once(report, std::move(finding).about(name));
}

void check_securing_unclear(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const StackPart& one : parts_of(rig, rig[stay.stay]))
          for (const FactName property : {fact_names.secured, fact_names.locked}) {
            const StatedFact held = stated_fact(one.part->particulars, property);
            if (held.how.text.empty())
              continue;
            look_at(rig, held,
                    {Any::property_of, {Words{std::string(property.text)}, Words{one.part->name}}},
                    diagnose("securing-unclear", {{"stay", name},
                                                  {"property", std::string(property.text)},
                                                  {"part", one.part->name},
                                                  {"text", held.how.text}}),
                    name, of_stay);
          }
      });
}

void check_locking_unclear(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        std::vector<SpliceId> seen;
        for (const StackItem& item : rig[stay.stay].stack) {
          if (!item.splice || std::find(seen.begin(), seen.end(), *item.splice) != seen.end())
            continue;
          seen.push_back(*item.splice);
          const Splice& splice = rig[*item.splice];
          const StatedFact held = stated_fact(splice.particulars, fact_names.locking);
          if (held.how.text.empty())
            continue;
          look_at(rig, held,
                  {Any::property_of, {Words{std::string(fact_names.locking.text)}, Words{splice.name}}},
                  diagnose("locking-unclear",
                           {{"stay", name}, {"splice", splice.name}, {"text", held.how.text}}),
                  name, of_stay);
        }
      });
}

} // namespace

const CheckTable checks{CheckRow{"securing-unclear", check_securing_unclear},
                        CheckRow{"locking-unclear", check_locking_unclear}};

} // namespace sheerpole::odd_words
