#include "model/print_records.hpp"

#include "model/print_sourced.hpp"

namespace sheerpole {

namespace {

class RecordPrinter {
public:
  explicit RecordPrinter(const Rig& rig) : rig_(rig) {}

  std::string run() {
    for (const State& one : rig_.states)
      state(one);
    for (const Record& one : rig_.records)
      record(one);
    limits(rig_.limits);
    for (const UserRule& one : rig_.rules)
      rule(one);
    for (const Waiver& one : rig_.waivers)
      waiver(one);
    for (const Expectation& one : rig_.expectations)
      text_ += print_line("expect " + stays(one.stays) + " ", one.quantity, one.value);
    for (const Inspection& one : rig_.inspections)
      inspection(one);
    for (const Difference& one : rig_.differences)
      difference(one);
    return std::move(text_);
  }

private:
  void fact(std::string_view name, const std::string& value) {
    if (value.empty())
      return;
    text_ += "  ";
    text_ += name;
    text_ += ": " + value + "\n";
  }

  std::string stays(const std::vector<StayId>& ids) const {
    std::string result;
    for (const StayId id : ids)
      result += (result.empty() ? "" : ", ") + rig_[id].name;
    return result;
  }

  void state(const State& state) {
    text_ += "state " + titled(state.name, state.title) + "\n";
    fact("note", state.note);
    for (const StatePosition& position : state.positions) {
      fact("stay", rig_[position.stay].name);
      for (const StackItem& item : position.as_set)
        text_ += print_line("    ", rig_[item.part].name, *item.set_length);
      if (position.stowed_at)
        fact("  stowed-at", rig_[*position.stowed_at].name);
      fact("  note", position.note);
    }
  }

  void record(const Record& record) {
    text_ += record.kind + " " + titled(record.name, record.title) +
             (record.of.empty() ? "" : " of " + record.of) + "\n";
    for (const Particular& one : record.facts)
      fact(one.name, one.text + " " + print_provenance(one.value.provenance));
  }

  void limits(const Limits& limits) {
    for (const StatedLimit& limit : limits.stated())
      text_ += "limit " + std::string(row_of(limit.limit).name) + ": " + limits.text(limit.limit) + " " +
               print_provenance(limit.provenance) + "\n";
  }

  void rule(const UserRule& rule) {
    text_ += "rule " + titled(rule.name, rule.title) + "\n";
    if (rule.quantity.empty()) {
      fact("looks-at", rule.looks_at);
      fact("sort", rule.sort);
      fact("property", rule.property);
      fact("is", rule.is);
      fact("is-not", rule.is_not);
      fact("stated", rule.to_be_stated ? "yes" : "");
    }
    fact("quantity", rule.quantity);
    bound("at-least", rule.at_least);
    bound("at-most", rule.at_most);
    fact("stays", stays(rule.stays));
    fact("severity", rule.severity);
    fact("message", rule.message);
    fact("why", rule.why);
    fact("mend", rule.mend);
    fact("active", rule.active ? "on" : "off");
  }

  void bound(std::string_view name, const std::optional<Sourced<Quantity>>& bound) {
    if (!bound)
      return;
    if (bound->value.dimension != dimension::length) {
      text_ += print_line("  ", name, Sourced<double>{bound->value.si, bound->provenance, std::nullopt});
      return;
    }
    Sourced<Length> length{Length::from_si(bound->value.si), bound->provenance, std::nullopt};
    if (bound->tolerance)
      length.tolerance = Length::from_si(bound->tolerance->si);
    text_ += print_line("  ", name, length);
  }

  void waiver(const Waiver& waiver) {
    text_ += "waive " + waiver.slug + (waiver.stay.empty() ? "" : " of " + waiver.stay) + "\n";
    fact("reason", waiver.reason);
    fact("by", waiver.by);
    fact("until", waiver.until);
  }

  void inspection(const Inspection& inspection) {
    text_ += "finding of " + stays(inspection.stays) + "\n";
    for (const PartId part : inspection.between)
      fact("part", rig_[part].name);
    fact("date", inspection.date);
    fact("by", inspection.by);
    fact("condition", inspection.condition);
    fact("note", inspection.note);
  }

  void difference(const Difference& difference) {
    text_ += "difference by " + difference.origin + ": " + difference.property + " of " +
             difference.subject + "\n";
    fact("was", difference.was);
    fact("is", difference.is);
  }

  const Rig& rig_;
  std::string text_;
};

} // namespace

std::string print_records(const Rig& rig) {
  return RecordPrinter(rig).run();
}

} // namespace sheerpole
