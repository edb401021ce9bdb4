#include "calculate/adjust/piece_history.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/length_phrases.hpp"

#include <algorithm>
#include <cmath>

/// What became of the pieces: how long they came out, from which batch, in which order of days.
namespace sheerpole::made_pieces {

namespace {

using P = LengthCheckPhrase;

/// What the stay's adjuster makes of a piece that came out so much longer.
Remark then(const Rig& rig, const DerivedStay& stay, const PieceEntry& entry) {
  const auto set = adjuster_with(stay, entry);
  if (!set)
    return P::no_one_adjuster;
  const TakeUp& adjuster = stay.adjusters.front();
  const Words name{rig[adjuster.part].name};
  const Length longer = *entry.longer();
  if (longer > adjuster.to_tighten + threshold::negligible)
    return {P::cannot_be_tightened, {name, longer - adjuster.to_tighten}};
  if (-longer > adjuster.to_slacken + threshold::negligible)
    return {P::cannot_be_slackened, {name, -longer - adjuster.to_slacken}};
  const Part& part = rig[adjuster.part];
  if (part.step && part.shortest && part.step->value > Length{}) {
    const auto hole = std::lround((*set - part.shortest->value) / part.step->value);
    const Length off = *set - (part.shortest->value + part.step->value * static_cast<double>(hole));
    if (magnitude(off) > threshold::negligible)
      return {P::nearest_hole_then, {name, Count{hole + 1}, magnitude(off), *set}};
  }
  return {P::is_then_set, {name, *set}};
}

void look_at_entry(const Rig& rig, const DerivedStay& stay, const std::string& name,
                   const PieceEntry& entry, Length most, CheckReport& report) {
  const auto longer = entry.longer();
  if (!longer || entry.pull_not_counted) {
    report.not_checked(name, {longer ? P::pull_not_counted : P::nothing_to_hold_against});
    return;
  }
  const std::string is = length_text(*entry.body);
  const std::string wanted = length_text(*entry.wanted);
  if (magnitude(*longer) <= most + threshold::negligible) {
    report.pass(name, passed(report.check(), {{"is", is}, {"wanted", wanted}}));
    return;
  }
  report.find(diagnose(report.check(),
                       {{"piece", name},
                        {"stage", std::string(name_of(entry.record->stage))},
                        {"is", is},
                        {"wanted", wanted},
                        {"off", say(rig, {*longer > Length{} ? P::came_out_longer : P::came_out_shorter,
                                          {magnitude(*longer)}})},
                        {"then", say(rig, then(rig, stay, entry))}})
                  .at(entry.record->body->provenance.place.value_or(entry.record->place))
                  .about(name));
}

/// Every record with a length counts: a slip in an earlier stage is one all the same.
void check_piece_apart(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::made_apart);
  if (rig.piece_records.empty())
    return;
  for (const DerivedStay& stay : derived.stays)
    for (std::size_t i = 0; i < stay.pieces.size(); ++i) {
      const std::string& name = stay.pieces[i].name;
      for (const PieceEntry& entry : piece_history(rig, stay, i).entries)
        if (entry.body)
          look_at_entry(rig, stay, name, entry, most, report);
    }
}

void check_pair_two_batches(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const DerivedStay& port : derived.stays) {
    const Stay& stay = rig[port.stay];
    const DerivedStay* starboard = stay.side == Side::port ? other_side(rig, derived, port) : nullptr;
    if (starboard == nullptr)
      continue;
    for (std::size_t i = 0; i < std::min(port.pieces.size(), starboard->pieces.size()); ++i) {
      const std::string of_port = batch_of(rig, port, i);
      const std::string of_starboard = batch_of(rig, *starboard, i);
      if (of_port.empty() && of_starboard.empty())
        continue; // nobody speaks of batches
      if (of_port.empty() || of_starboard.empty())
        report.not_checked(stay.base,
                           {of_port.empty() ? P::batch_of_port_missing : P::batch_of_starboard_missing});
      else if (of_port == of_starboard)
        report.pass(stay.base, passed(report.check(), {{"batch", of_port}}));
      else
        report.find(
            diagnose(report.check(), {{"stay", stay.base}, {"port", of_port}, {"starboard", of_starboard}})
                .at(stay.place)
                .about(stay.base));
    }
  }
}

void check_piece_days(const Rig& rig, const Derived& derived, CheckReport& report) {
  if (rig.piece_records.empty())
    return;
  for (const DerivedStay& stay : derived.stays)
    for (std::size_t i = 0; i < stay.pieces.size(); ++i) {
      const std::string& name = stay.pieces[i].name;
      const PieceRecord* earlier = nullptr;
      for (const PieceEntry& entry : piece_history(rig, stay, i).entries) {
        const PieceRecord& record = *entry.record;
        if (record.date.empty())
          continue;
        if (earlier != nullptr && record.date < earlier->date) // ISO 8601 days are in order as texts
          report.find(diagnose(report.check(), {{"piece", name},
                                                {"stage", std::string(name_of(record.stage))},
                                                {"date", record.date},
                                                {"before", std::string(name_of(earlier->stage))},
                                                {"earlier", earlier->date}})
                          .at(record.place)
                          .and_at(earlier->place, std::string(name_of(earlier->stage)))
                          .about(name));
        else if (earlier != nullptr)
          report.pass(name, passed(report.check(), {{"date", record.date}, {"earlier", earlier->date}}));
        earlier = &record;
      }
    }
}

} // namespace

const CheckTable checks{CheckRow{"piece-apart", check_piece_apart, {Limit::made_apart}},
                        CheckRow{"pair-two-batches", check_pair_two_batches},
                        CheckRow{"piece-days", check_piece_days}};

} // namespace sheerpole::made_pieces
