#include "calculate/bench/restate_for_shop.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/quantity_text.hpp"

#include <utility>

namespace sheerpole {

namespace {

/// What the shop says of its papers, as one more thing that is stated over another: other shops of the
/// files may have said otherwise.
void note_unit(Rig& rig, const Record& shop) {
  bool any = false;
  for (const Record& record : rig.records)
    any = any ||
          (record.kind == RecordKind::shop && (find_fact(record.facts, fact_names.unit) != nullptr ||
                                               find_fact(record.facts, fact_names.round_to) != nullptr));
  if (!any)
    return;
  rig.differences.push_back({Difference::Origin::shop, shop.name, "", std::string(fact_names.unit), "",
                             fact_text(shop.facts, fact_names.unit),
                             fact_text(shop.facts, fact_names.round_to), shop.place});
}

} // namespace

ShopFault restate_for_shop(Rig& rig, const std::string& shop) {
  const Record* record = find_record(rig, RecordKind::shop, shop);
  if (record == nullptr)
    return ShopFault::not_found;
  const auto open = fact_number(record->facts, fact_names.delivered_open);
  if (!open)
    return ShopFault::no_opening;
  for (Stay& stay : rig.stays)
    for (StackItem& item : stay.stack) {
      if (item.kind != StackItem::Kind::part || !item.set_length)
        continue;
      const Part& part = rig[item.part];
      if (part.role != Part::Role::adjuster || !part.screw || !part.shortest || !part.longest)
        continue;
      const std::string was = item.set_length->provenance.written.empty()
                                  ? length_text(item.set_length->value)
                                  : item.set_length->provenance.written;
      Sourced<Length> set;
      set.value = part.shortest->value + (part.longest->value - part.shortest->value) * open->value;
      set.provenance = item.set_length->provenance;
      set.provenance.source_class = SourceClass::computed;
      set.provenance.note.clear();
      set.provenance.derivation = {Derivation::as_shop_delivers, {Words{shop}}};
      set.provenance.written = open->provenance.written + " open";
      const std::string is = set.provenance.written + ", " + length_text(set.value);
      rig.differences.push_back(
          {Difference::Origin::shop, shop, stay.name, part.name, was, is, "", record->place});
      item.set_length = std::move(set);
      item.open = *open;
    }
  note_unit(rig, *record);
  return ShopFault::none;
}

} // namespace sheerpole
