#include "calculate/uncertainty/rig_uncertainty.hpp"

#include "base/in_threads.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "calculate/reading/reading_length.hpp"
#include "calculate/uncertainty/reading_doubt.hpp"
#include "calculate/uncertainty/response.hpp"
#include "calculate/uncertainty/splice_scatter.hpp"
#include "calculate/uncertainty/uncertainty_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

constexpr double worth_counting = 1e-5; // metres; a hundredth of a millimetre
constexpr double follows = 1e-9;        // metres; less is the rounding of the machine
constexpr double most_draws = 40e6;

Distribution distribution_of(const Record* settings) {
  const std::string word = settings == nullptr ? "" : fact_text(settings->facts, fact_names.distribution);
  return word == "triangular"      ? Distribution::triangular
         : word == "normal-at-two" ? Distribution::normal_at_two
                                   : Distribution::rectangular;
}

/// One input of one stay and how to move it: to z bounds from where it is stated.
struct Mover {
  std::size_t input = 0;
  std::function<void(double)> move;
};

class StayTrial {
public:
  StayTrial(Rig& trial, StayId id, const CutOf& cut_of) : trial_(trial), id_(id), cut_of_(cut_of) {}

  double cut() const { return cut_of_(trial_, id_).metres(); }

  Response respond(const std::vector<Mover>& movers) const {
    Response response;
    const double stated = cut();
    std::vector<const Mover*> active;
    std::vector<double> sums; // of g and h of each active mover at +1
    for (const Mover& mover : movers) {
      mover.move(1.0);
      const double up = cut() - stated;
      mover.move(-1.0);
      const double down = cut() - stated;
      mover.move(0.0);
      const double linear = (up - down) / 2.0;
      const double square = (up + down) / 2.0;
      if (std::fabs(linear) < follows && std::fabs(square) < follows)
        continue;
      response.linear.push_back({mover.input, linear});
      if (std::fabs(square) > worth_counting)
        response.products.push_back({mover.input, mover.input, square});
      active.push_back(&mover);
      sums.push_back(up);
    }
    for (std::size_t a = 0; a < active.size() && products_matter(active, sums, stated); ++a)
      for (std::size_t b = a + 1; b < active.size(); ++b)
        add_product(*active[a], *active[b], response);
    return response;
  }

private:
  /// With everything moved up at once: whether the moves do more together than each by itself.
  bool products_matter(const std::vector<const Mover*>& active, const std::vector<double>& sums,
                       double stated) const {
    if (active.size() < 2)
      return false;
    double alone = 0.0;
    double alone_mixed = 0.0;
    for (std::size_t i = 0; i < active.size(); ++i) {
      active[i]->move(1.0);
      alone += sums[i];
    }
    const double together = cut() - stated;
    for (std::size_t i = 0; i < active.size(); ++i) {
      active[i]->move(i % 2 == 0 ? 1.0 : -1.0);
      alone_mixed += i % 2 == 0 ? sums[i] : -sums[i];
    }
    const double mixed = cut() - stated;
    for (const Mover* mover : active)
      mover->move(0.0);
    return std::fabs(together - alone) > worth_counting || std::fabs(mixed - alone_mixed) > worth_counting;
  }

  void add_product(const Mover& a, const Mover& b, Response& response) const {
    double sum = 0.0;
    for (const double first : {1.0, -1.0})
      for (const double second : {1.0, -1.0}) {
        a.move(first);
        b.move(second);
        sum += first * second * cut();
      }
    a.move(0.0);
    b.move(0.0);
    if (std::fabs(sum / 4.0) > worth_counting)
      response.products.push_back({a.input, b.input, sum / 4.0});
  }

  Rig& trial_;
  StayId id_;
  const CutOf& cut_of_;
};

/// Gathers the inputs of all stays, each once.
class RigInputs {
public:
  RigInputs(const Rig& rig, Derived& derived)
      : rig_(rig), derived_(derived),
        distribution_(
            distribution_of(find_record(rig, RecordKind::uncertainty, name_of(RecordKind::uncertainty)))) {}

  std::size_t of_bound(BoundId id) {
    const auto [found, fresh] = bounds_.try_emplace(id, derived_.inputs.size());
    if (fresh) {
      const StatedBound& bound = rig_[id];
      derived_.inputs.push_back({Remark(UncertaintyPhrase::named, {Words{bound.name}}), bound.bound,
                                 distribution_, 0, bound.place});
    }
    return found->second;
  }
  std::size_t of_tape(const Record& tape, Length error) {
    const auto [found, fresh] = tapes_.try_emplace(tape.name, derived_.inputs.size());
    if (fresh)
      derived_.inputs.push_back({Remark(UncertaintyPhrase::tape_error, {Words{tape.name}}), error.metres(),
                                 distribution_, 0, tape.place});
    return found->second;
  }
  /// Half the width of a knot, either way.
  std::size_t of_knot(StayId stay, const Record& cord, const Reading& reading, Length half) {
    derived_.inputs.push_back({Remark(UncertaintyPhrase::knot_of_cord, {stay, Words{cord.name}}),
                               half.metres(), distribution_, 0, reading.place});
    return derived_.inputs.size() - 1;
  }
  std::size_t of_runs(StayId stay, const Reading& reading, double standard_of_mean) {
    derived_.inputs.push_back({Remark(UncertaintyPhrase::scatter_of_runs, {stay}), standard_of_mean,
                               Distribution::student, reading.lengths().size() - 1, reading.place});
    return derived_.inputs.size() - 1;
  }

  std::size_t of_resolution(StayId stay, const Reading& reading, const Resolution& resolution) {
    derived_.inputs.push_back({{resolution.by_practice ? UncertaintyPhrase::resolution_by_practice
                                                       : UncertaintyPhrase::resolution_of,
                                {stay}},
                               resolution.half.metres(),
                               Distribution::rectangular,
                               0,
                               reading.place});
    return derived_.inputs.size() - 1;
  }
  std::size_t of_tests(const BuriesOnRope& buries) {
    derived_.inputs.push_back({{UncertaintyPhrase::scatter_of_tests, {buries.rope}},
                               buries.standard(),
                               Distribution::student,
                               buries.tests.all.size() - 1,
                               buries.tests.all.front().place});
    return derived_.inputs.size() - 1;
  }

private:
  const Rig& rig_;
  Derived& derived_;
  Distribution distribution_;
  std::map<BoundId, std::size_t> bounds_;
  std::map<std::string, std::size_t> tapes_;
};

using Amounts = std::vector<std::pair<std::size_t, double>>; ///< input, and by how much for one bound

/// The inputs of one stay and where each of them is put.
class Moves {
public:
  /// `taken` is the reading that the length comes from; it is the only one that the trial has, when there
  /// is one: the others are inputs too, and move nothing.
  Moves(Rig& trial, const Rig& rig, StayId id, const std::vector<StayField>& fields, RigInputs& inputs,
        std::optional<std::size_t> taken) {
    std::map<const void*, Amounts> scatter;
    for (const BuriesOnRope& buries : buries_of(rig, id)) {
      if (buries.standard() <= 0.0)
        continue;
      const std::size_t input = inputs.of_tests(buries);
      for (const auto& [what, amount] : follow_scatter(trial, rig, buries))
        scatter[what].emplace_back(input, amount);
    }
    for (const StayField& field : fields) {
      Moved moved{[&field](double change) { field.set(field.value + change); }, {}};
      if (const auto found = scatter.find(field.what); found != scatter.end())
        for (const auto& [input, amount] : found->second)
          moved.by.emplace_back(known(input), amount);
      for (const Influence& influence : *field.influences)
        if (influence.amount != 0.0)
          moved.by.emplace_back(known(inputs.of_bound(influence.bound)), influence.amount);
      if (!moved.by.empty())
        moved_.push_back(std::move(moved));
    }
    Stay& stay = trial.stays[id.index()];
    for (std::size_t i = 0; i < rig[id].readings.size(); ++i) {
      const Reading& reading = rig[id].readings[i];
      const bool tried = !taken || *taken == i;
      Reading* const in_trial = tried ? &stay.readings[taken ? 0 : i] : nullptr;
      Moved moved{[in_trial](double change) { in_trial->shift = Length::metres(change); }, {}};
      if (reading.lengths().size() > 1)
        if (const double standard = standard_of_mean(reading); standard > 0.0)
          moved.by.emplace_back(known(inputs.of_runs(id, reading, standard)), standard);
      if (const auto resolution = resolution_of(reading); resolution && resolution->half > Length{})
        moved.by.emplace_back(known(inputs.of_resolution(id, reading, *resolution)),
                              resolution->half.metres());
      const Record* tape =
          reading.tape.empty() ? nullptr : find_record(rig, RecordKind::tape, reading.tape);
      const auto error = tape == nullptr ? std::nullopt : fact_length(tape->facts, fact_names.error);
      if (error)
        moved.by.emplace_back(known(inputs.of_tape(*tape, error->value)), error->value.metres());
      add_cord(rig, id, reading, inputs, moved);
      if (tried && !moved.by.empty())
        moved_.push_back(std::move(moved));
    }
  }

  std::vector<Mover> movers() {
    std::vector<Mover> result;
    for (auto& [input, at] : at_)
      result.push_back({input, [this, &at = at](double z) {
                          at = z;
                          put();
                        }});
    return result;
  }

private:
  struct Moved {
    std::function<void(double)> change;
    Amounts by;
  };
  /// What the knot and the stretch of the cord let X be off by. The pull on the bench may stretch the cord
  /// by as much more or less than aloft as the bound of its stretch says. Source: common practice, no
  /// source.
  void add_cord(const Rig& rig, StayId id, const Reading& reading, RigInputs& inputs, Moved& moved) {
    const Record* cord = reading.cord.empty() ? nullptr : find_record(rig, RecordKind::cord, reading.cord);
    if (cord == nullptr || !reading.runs.empty())
      return;
    if (const auto width = fact_length(cord->facts, fact_names.knot_width);
        width && width->value > Length{}) {
      const Length half = width->value / 2.0;
      moved.by.emplace_back(known(inputs.of_knot(id, *cord, reading, half)), half.metres());
    }
    const Particular* stretch = find_fact(cord->facts, fact_names.stretch);
    const auto expected = expected_length(rig, rig[id]);
    if (stretch == nullptr || !expected)
      return;
    for (const Influence& influence : stretch->value.influences)
      if (influence.amount != 0.0)
        moved.by.emplace_back(known(inputs.of_bound(influence.bound)),
                              influence.amount * expected->metres());
  }
  std::size_t known(std::size_t input) {
    at_.try_emplace(input, 0.0);
    return input;
  }
  void put() const {
    for (const Moved& moved : moved_) {
      double change = 0.0;
      for (const auto& [input, amount] : moved.by)
        change += at_.at(input) * amount;
      moved.change(change);
    }
  }
  std::map<std::size_t, double> at_; ///< in bounds
  std::vector<Moved> moved_;
};

/// What the cut follows and for which no bound is stated.
std::vector<Remark> without_bound(const std::vector<StayField>& fields, const std::set<const void*>& held,
                                  const StayTrial& trial) {
  std::vector<Remark> result;
  const double stated = trial.cut();
  for (const StayField& field : fields) {
    if (field.bounded || held.contains(field.what))
      continue;
    field.set(field.value + field.step);
    const double moved = trial.cut();
    field.set(field.value);
    if (std::fabs(moved - stated) > follows)
      result.push_back(field.name);
  }
  return result;
}

struct Pending {
  DerivedStay* stay = nullptr;
  Response response;
};

Uncertainty by_propagation(const Response& response, const std::vector<UncertainInput>& inputs) {
  Uncertainty result;
  const WorstCase worst = worst_case(response, inputs);
  result.worst_low = Length::metres(worst.low);
  result.worst_high = Length::metres(worst.high);
  const Propagated propagated = propagate(response, inputs);
  result.standard = Length::metres(propagated.standard);
  result.freedom = propagated.freedom;
  result.coverage_factor = propagated.factor;
  result.expanded = Length::metres(propagated.expanded);
  const double variance = propagated.standard * propagated.standard;
  for (const Response::Linear& term : response.linear) {
    UncertaintyShare share;
    share.input = term.input;
    share.per_bound = Length::metres(term.amount);
    share.standard = Length::metres(std::fabs(term.amount) * inputs[term.input].standard_over_bound());
    share.share = variance > 0.0 ? share.standard.metres() * share.standard.metres() / variance : 0.0;
    result.shares.push_back(share);
  }
  std::stable_sort(result.shares.begin(), result.shares.end(),
                   [](const auto& a, const auto& b) { return a.share > b.share; });
  return result;
}

void add_draws(std::vector<Pending>& pending, const Rig& rig, Derived& derived, unsigned threads) {
  std::vector<DrawRequest> requests;
  for (const Pending& one : pending) {
    DrawRequest request{&one.response, 0.0, 0.0};
    if (one.stay->adjusters.size() == 1) {
      // Where the cut ought to have been longer the stay is short, and the adjuster gives out.
      const TakeUp& adjuster = one.stay->adjusters.front();
      const int count = rig[one.stay->stay].stack[adjuster.item].count;
      request.least = -(adjuster.to_tighten * count).metres();
      request.most = (adjuster.to_slacken * count).metres();
    }
    requests.push_back(request);
  }
  constexpr std::size_t at_once = 32; // responses whose draws are kept in memory together
  if (threads == 0)
    threads = std::min(threads_of_use(), 16U);
  for (std::size_t from = 0; from < requests.size(); from += at_once) {
    const std::size_t count = std::min(at_once, requests.size() - from);
    const std::vector<Drawn> drawn = monte_carlo(std::span(requests).subspan(from, count), derived.inputs,
                                                 derived.draws, derived.seed, threads);
    for (std::size_t i = 0; i < count; ++i) {
      Uncertainty& uncertainty = *pending[from + i].stay->uncertainty;
      uncertainty.drawn_low = Length::metres(drawn[i].low);
      uncertainty.drawn_high = Length::metres(drawn[i].high);
      uncertainty.drawn_standard = Length::metres(drawn[i].standard);
      if (pending[from + i].stay->adjusters.size() == 1)
        uncertainty.reaches = drawn[i].within;
    }
  }
}

} // namespace

void add_uncertainty(const Rig& rig, const CutOf& cut_of, Derived& derived, unsigned threads,
                     DoubtFor reader) {
  const bool any =
      !rig.bounds.empty() || std::any_of(rig.stays.begin(), rig.stays.end(), [](const Stay& stay) {
        return std::any_of(stay.readings.begin(), stay.readings.end(),
                           [](const Reading& reading) { return reading.says_a_length(); });
      });
  const bool tested = std::any_of(rig.records.begin(), rig.records.end(), [](const Record& record) {
    return record.kind == RecordKind::test_splice;
  });
  if (!any && !tested)
    return;
  Rig changed = rig;
  RigInputs inputs(rig, derived);
  std::vector<Pending> pending;
  for (DerivedStay& stay : derived.stays) {
    // Which reading counts does not change in a trial, so each trial need not choose among all of them
    // again.
    const std::optional<std::size_t> taken = stay.readings.taken;
    std::vector<Reading>& readings = changed.stays[stay.stay.index()].readings;
    if (taken)
      readings = {rig[stay.stay].readings[*taken]};
    const std::vector<StayField> fields = stay_fields(changed, stay.stay);
    const StayTrial trial(changed, stay.stay, cut_of);
    Moves moves(changed, rig, stay.stay, fields, inputs, taken);
    const std::vector<Mover> movers = moves.movers();
    if (movers.empty())
      continue;
    Response response = trial.respond(movers);
    if (response.linear.empty())
      continue;
    stay.uncertainty = by_propagation(response, derived.inputs);
    if (reader == DoubtFor::checks)
      continue;
    stay.uncertainty->without_bound =
        without_bound(fields, held_by_scatter(changed, rig, stay.stay), trial);
    for (Remark& unknown : unknown_of_splices(rig, stay.stay))
      stay.uncertainty->without_bound.push_back(std::move(unknown));
    pending.push_back({&stay, std::move(response)});
  }
  const Record* settings = find_record(rig, RecordKind::uncertainty, name_of(RecordKind::uncertainty));
  if (settings != nullptr) {
    if (const auto draws = fact_number(settings->facts, fact_names.draws))
      derived.draws = static_cast<std::size_t>(std::clamp(draws->value, 1000.0, 1e6));
    if (const auto seed = fact_number(settings->facts, fact_names.seed))
      derived.seed = static_cast<std::uint64_t>(std::clamp(seed->value, 0.0, 1e15));
  }
  if (!pending.empty())
    derived.draws = std::max<std::size_t>(
        1000, std::min(derived.draws,
                       static_cast<std::size_t>(most_draws / static_cast<double>(pending.size()))));
  add_draws(pending, rig, derived, threads);
}

} // namespace sheerpole
