#include "calculate/tune/tune_later.hpp"

#include "calculate/adjust/account.hpp"
#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/facts.hpp"
#include "model/kind_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double usual_coldest_kelvin = 263.15, usual_warmest_kelvin = 313.15;

double day(const Rig& rig, FactName name, double otherwise) {
  const Record* record = find_record(rig, RecordKind::take_up, name_of(RecordKind::take_up));
  const auto stated = record == nullptr ? std::nullopt : fact_number(record->facts, name);
  return stated ? stated->value : otherwise;
}

class Later {
public:
  Later(const Rig& rig, const Derived& derived, const TunedRig& tuned)
      : rig_(rig), derived_(derived), tuned_(tuned) {}

  std::vector<TuneLater> all() {
    add_day(AdjusterPhrase::coldest_day, day(rig_, fact_names.coldest, usual_coldest_kelvin));
    add_day(AdjusterPhrase::warmest_day, day(rig_, fact_names.warmest, usual_warmest_kelvin));
    for (const DerivedStay& stay : derived_.stays)
      for (const AccountLeft& left : stay.account.left)
        if (std::ranges::none_of(result_, [&](const TuneLater& one) { return one.when == left.after; }))
          add_time(left.after);
    return std::move(result_);
  }

private:
  void add_day(AdjusterPhrase phrase, double kelvin) {
    TuneLater later{.when = {phrase, {Temperature{kelvin}}}};
    for (const TuneStay& stay : tuned_.model.stays) {
      const DerivedStay& derived = derived_.stays[stay.stay.index()];
      const ThermalTable table = thermal_table(rig_, rig_[stay.stay], derived.pieces, {kelvin});
      double longer = 0.0;
      if (table.rows.empty())
        later.not_checked.push_back({stay.stay, table.not_checked});
      else
        longer = table.rows.front().slack().millimetres();
      later.longer_mm.push_back(longer);
    }
    finish(std::move(later));
  }

  void add_time(const Remark& after) {
    TuneLater later{.when = after};
    for (const TuneStay& stay : tuned_.model.stays) {
      const DerivedStay& derived = derived_.stays[stay.stay.index()];
      double longer = 0.0;
      std::vector<Remark> why;
      const Remark creep{AdjusterPhrase::creep_in, {Remarks{{after}}}};
      for (const AccountEntry& entry : derived.account.entries) {
        const bool counts = entry.name == creep || entry.name == Remark(AdjusterPhrase::bedding_in);
        if (!counts)
          continue;
        if (!entry.not_checked.empty())
          why.push_back(entry.not_checked);
        longer += entry.tightens.millimetres();
      }
      if (!why.empty())
        later.not_checked.push_back({stay.stay, std::move(why)});
      later.longer_mm.push_back(longer);
    }
    finish(std::move(later));
  }

  void finish(TuneLater later) {
    std::vector<double> lengths = tuned_.state.unstressed_mm;
    for (std::size_t i = 0; i < tuned_.model.stays.size(); ++i) {
      double whole = 0.0;
      for (const statics::StayId leg : tuned_.model.stays[i].legs)
        whole += tuned_.state.unstressed_mm[leg.index()];
      for (const statics::StayId leg : tuned_.model.stays[i].legs)
        lengths[leg.index()] += later.longer_mm[i] * tuned_.state.unstressed_mm[leg.index()] / whole;
    }
    later.state = tuned_.solver->settle(lengths, {}, &tuned_.state.configuration);
    if (Remark trouble = trouble_of(rig_, tuned_.model, later.state); !trouble.empty())
      later.trouble.push_back(std::move(trouble));
    else
      later.values = tuned_.values(later.state);
    result_.push_back(std::move(later));
  }

  const Rig& rig_;
  const Derived& derived_;
  const TunedRig& tuned_;
  std::vector<TuneLater> result_;
};

} // namespace

std::vector<TuneLater> tune_later(const Rig& rig, const Derived& derived, const TunedRig& tuned) {
  return Later(rig, derived, tuned).all();
}

} // namespace sheerpole
