#include "backend/source_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "calculate/facts.hpp"
#include "units/format_length.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

namespace sheerpole {

namespace {

std::string kilonewtons(Force force) {
  return format_fixed(force.kilonewtons(), 2);
}

std::string lacking(const Rig& rig, const ChainLink& link) {
  return link.not_stated.empty() ? "" : "not stated: " + lacking_words(rig, link);
}

std::string remark(const StayChain& chain, std::size_t i) {
  const ChainLink& link = chain.links[i];
  std::string words = chain.weakest == i ? "weakest known" : "";
  if (!link.meant.empty())
    words += (words.empty() ? "" : "; ") + ("meant to be: " + link.meant);
  return words;
}

void add_stay(const Rig& rig, const DerivedStay& derived, Table& table) {
  const Stay& stay = rig[derived.stay];
  const StayChain& chain = derived.chain;
  for (std::size_t i = 0; i < chain.links.size(); ++i) {
    const ChainLink& link = chain.links[i];
    // A hole whose pressure nobody states is the business of its part's break load.
    if (!link.counted)
      continue;
    table.rows.push_back({stay.name, say(rig, link.name),
                          link.break_load ? kilonewtons(*link.break_load) : "",
                          link.break_load ? say(rig, link.how) : lacking(rig, link),
                          link.break_load ? source_words(link.provenance) : "", remark(chain, i)});
  }
  if (const auto load = fact_force(stay.particulars, "load"))
    table.rows.push_back(
        {stay.name, "load", kilonewtons(load->value), "as stated", source_words(load->provenance),
         chain.weakest
             ? "the weakest known holds " +
                   format_fixed(*chain.links[*chain.weakest].break_load / load->value, 2) + " times it"
             : ""});
}

} // namespace

Table strength_table(const CheckedRig& checked) {
  Table table{
      .title = "Strength: what each link of a stay holds, from aloft to deck",
      .columns = {{"stay"}, {"link"}, {"kN", true}, {"how"}, {"source"}, {"remark"}},
      .rows = {},
      .notes = {"A stay holds no more than its weakest link. What is not stated is never taken for "
                "strong.",
                "Threads, the cheeks of jaws and the bend of a rope round its seat are not in it."}};
  for (const DerivedStay& stay : checked.derived().stays)
    add_stay(checked.rig(), stay, table);
  return table;
}

} // namespace sheerpole
