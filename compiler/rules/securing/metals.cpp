#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"

#include <array>

/// Metals that touch.
namespace sheerpole::metals {

namespace {

using Common = AnyCheckPhrase;

using P = SecuringCheckPhrase;

/// Metals that eat each other when they touch in salt water. Common practice, no source.
bool galvanic(std::string_view a, std::string_view b) {
  struct Pair {
    std::string_view eats;
    std::string_view eaten;
  };
  static constexpr std::array pairs{Pair{"stainless", "aluminium"}, Pair{"bronze", "aluminium"},
                                    Pair{"titanium", "aluminium"}, Pair{"stainless", "galvanised-steel"},
                                    Pair{"bronze", "galvanised-steel"}};
  for (const Pair& pair : pairs)
    if ((a == pair.eats && b == pair.eaten) || (b == pair.eats && a == pair.eaten))
      return true;
  return false;
}

std::string fact_of(const Part& part, std::string_view name) {
  return fact_text(part.particulars, name);
}

/// A soft eye and a lashing are of no metal.
bool is_of_rope(const Part& part) {
  return part.kind == PartKind::soft_eye || part.kind == PartKind::lashing;
}

class Neighbours {
public:
  Neighbours(const Rig& rig, const Stay& stay, const std::string& name, StayReport& report)
      : rig_(rig), stay_(stay), name_(name), report_(report) {}

  void look_at(const Joint& joint) {
    // What lies in the joint touches both: a pin or a bush of its own metal.
    std::size_t above = joint.upper;
    barrier_ = "";
    for (std::size_t i = joint.upper; i <= joint.lower; ++i)
      if (const Part* one = part(i); one != nullptr && one->kind != PartKind::foil)
        if (const StatedFact barrier = stated_fact(one->particulars, fact_names.barrier);
            barrier.how.answer == Answer::stated)
          barrier_ = barrier.how.text;
    for (std::size_t i = joint.upper + 1; i < joint.lower; ++i)
      if (const Part* one = part(i); one != nullptr &&
                                     (one->kind == PartKind::pin || one->kind == PartKind::bush) &&
                                     !fact_of(*one, fact_names.metal).empty()) {
        compare(above, i);
        above = i;
      }
    compare(above, joint.lower);
    if (above != joint.upper)
      compare(joint.upper, joint.lower);
  }

private:
  const Part* part(std::size_t item) const {
    return stay_.stack[item].kind == StackItem::Kind::part ? &rig_[stay_.stack[item].part] : nullptr;
  }

  void compare(std::size_t above, std::size_t below) {
    const Part* one = part(above);
    const Part* other = part(below);
    if (one == nullptr || other == nullptr || is_of_rope(*one) || is_of_rope(*other))
      return;
    const std::string a = fact_of(*one, fact_names.metal);
    const std::string b = fact_of(*other, fact_names.metal);
    if (a.empty() && b.empty())
      return;
    const Remark words(P::metal_to_metal, {Words{one->name}, Words{a}, Words{other->name}, Words{b}});
    if (a.empty() || b.empty())
      report_.not_checked(
          {P::metal_not_stated,
           {Words{one->name}, Words{other->name}, Words{a.empty() ? one->name : other->name}}});
    else if (!galvanic(a, b))
      report_.pass(words);
    else if (!barrier_.empty())
      report_.pass({Common::of_something, {Remarks{{words}}, Words{barrier_}}});
    else
      find_once(report_, diagnose("metals-differ", {{"stay", name_}, {"words", say(rig_, words)}})
                             .at(stay_.stack[below].place, b)
                             .and_at(stay_.stack[above].place, a)
                             .about(name_));
  }

  const Rig& rig_;
  const Stay& stay_;
  const std::string& name_;
  StayReport& report_;
  std::string barrier_;
};

void check_metals_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  Neighbours neighbours(rig, rig[stay.stay], name, of_stay);
                  for (const Joint& joint : stay.joints)
                    neighbours.look_at(joint);
                });
}

} // namespace

const CheckTable checks{CheckRow{"metals-differ", check_metals_differ}};

} // namespace sheerpole::metals
