#include "calculate/tune/tune_slips.hpp"

#include "calculate/facts.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Turns are counted to a quarter, and what looks like a whole number is within that.
constexpr double quarter_turn = 0.25;
/// Readings are off by one factor when each is within this of it, and it is further off than this from 1.
constexpr double one_factor_within = 0.04, factor_shows = 0.12;
/// Readings that are off by less than this, in squares of their bounds each, need no slip; one slip
/// explains them when it leaves less than this share; another is as likely that leaves no more than so much
/// more. Choices of the project.
constexpr double explained_within = 1.0, explains = 0.25, as_likely_within = 4.0;

/// The rig by its settings alone.
struct BySettings {
  std::vector<double> values;
  statics::Influence influence;
};

/// Nothing unless all are stated and it stands.
std::optional<BySettings> by_settings(const Rig& rig, const TunedRig& tuned) {
  for (const TuneStay& stay : tuned.model.stays)
    if (find_fact(rig[stay.stay].particulars, fact_names.taken_up) == nullptr || stay.seized_under_tension)
      return std::nullopt;
  const statics::State state = tuned.solver->settle();
  auto influence = tuned.solver->influence(state);
  if (!influence)
    return std::nullopt;
  return BySettings{tuned.values(state), std::move(*influence)};
}

double mean_of(const TuneStay& stay) {
  double sum = 0.0;
  for (const TuneStay::Read& read : stay.readings)
    sum += read.newtons;
  return sum / static_cast<double>(stay.readings.size());
}

/// What one stay alone took more than is stated, if that is the slip, and how far the readings are off
/// then: the sum of squares in their bounds.
struct OneSlip {
  std::size_t stay = 0;
  double more_mm = 0.0, off = 0.0;
};

/// Slips of one stay that would explain the readings, by the tangent; none when nothing has to be explained
/// or nothing does.
std::vector<OneSlip> single_slips(const TunedRig& tuned, const BySettings& settings,
                                  const std::vector<TuneSlip>& read) {
  const auto weight = [&](const TuneSlip& slip) {
    return 1.0 / tuned.model.stays[slip.stay].readings.front().bound_newtons;
  };
  double off = 0.0;
  for (const TuneSlip& slip : read)
    off += std::pow((slip.read_newtons - settings.values[slip.stay]) * weight(slip), 2);
  if (off <= explained_within * static_cast<double>(read.size()))
    return {};
  std::vector<OneSlip> result;
  for (std::size_t i = 0; i < tuned.model.stays.size(); ++i) {
    const TuneStay& stay = tuned.model.stays[i];
    double cross = 0.0, square = 0.0;
    for (const TuneSlip& slip : read) {
      const double by =
          settings.influence.tension_newtons_per_mm[stay.legs[stay.screwed].index()]
                                                   [tuned.model.stays[slip.stay].at_deck().index()] *
          weight(slip);
      cross += by * (slip.read_newtons - settings.values[slip.stay]) * weight(slip);
      square += by * by;
    }
    if (square > 0.0)
      result.push_back({i, cross / square, off - cross * cross / square});
  }
  std::ranges::sort(result, {}, &OneSlip::off);
  if (result.empty() || result.front().off > explains * off)
    return {};
  std::erase_if(result, [least = result.front().off](const OneSlip& slip) {
    return slip.off > least + as_likely_within;
  });
  return result;
}

void add_turns(const TuneStay& stay, double more_mm, TuneSlip& slip) {
  slip.more_taken_mm = more_mm;
  if (!stay.by_turns) {
    slip.likeliest.push_back({more_mm > 0.0 ? TunePhrase::took_more : TunePhrase::took_less,
                              {Length::millimetres(std::abs(more_mm))}});
    return;
  }
  const double turns = more_mm / stay.step_mm;
  const double stated = stay.taken_mm / stay.step_mm;
  if (std::abs(turns) <= quarter_turn)
    return;
  if (std::abs(stated) > 1.0 && std::abs(turns + 2.0 * stated) <= quarter_turn)
    slip.likeliest.push_back(TunePhrase::wrong_hand);
  if (const double whole = std::round(turns); std::abs(turns - whole) <= quarter_turn && whole != 0.0)
    slip.likeliest.push_back({whole > 0.0 ? TunePhrase::miscounted_more : TunePhrase::miscounted_less,
                              {Decimal{std::abs(whole), 0}}});
  if (slip.likeliest.empty())
    slip.likeliest.push_back({turns > 0.0 ? TunePhrase::stands_tighter : TunePhrase::stands_slacker,
                              {Decimal{std::abs(turns), 1}}});
}

/// Whether all readings are off from the settings by one factor.
std::optional<double> one_factor(const std::vector<TuneSlip>& slips) {
  double sum = 0.0, least = 1e9, most = 0.0;
  std::size_t count = 0;
  for (const TuneSlip& slip : slips) {
    if (!slip.by_settings_newtons || !(*slip.by_settings_newtons > 0.0))
      continue;
    const double factor = slip.read_newtons / *slip.by_settings_newtons;
    least = std::min(least, factor);
    most = std::max(most, factor);
    sum += factor;
    ++count;
  }
  if (count < 3)
    return std::nullopt;
  const double mean = sum / static_cast<double>(count);
  const bool alike = most - mean <= one_factor_within * mean && mean - least <= one_factor_within * mean;
  return alike && std::abs(mean - 1.0) > factor_shows ? std::optional(mean) : std::nullopt;
}

} // namespace

std::vector<TuneSlip> tune_slips(const Rig& rig, const Derived&, const TunedRig& tuned) {
  std::vector<TuneSlip> result;
  const auto settings = by_settings(rig, tuned);
  for (std::size_t i = 0; i < tuned.model.stays.size(); ++i) {
    const TuneStay& stay = tuned.model.stays[i];
    if (stay.readings.empty())
      continue;
    TuneSlip slip{.stay = i, .read_newtons = mean_of(stay)};
    if (settings)
      slip.by_settings_newtons = settings->values[i];
    result.push_back(std::move(slip));
  }
  if (const auto factor = one_factor(result)) {
    for (TuneSlip& slip : result)
      if (slip.by_settings_newtons)
        slip.likeliest.push_back({TunePhrase::gauge_of_another_size, {Decimal{*factor, 2}}});
    return result;
  }
  if (!settings)
    return result;
  for (const OneSlip& one : single_slips(tuned, *settings, result)) {
    auto slip = std::ranges::find(result, one.stay, &TuneSlip::stay);
    if (slip == result.end())
      slip = result.insert(slip, TuneSlip{.stay = one.stay});
    add_turns(tuned.model.stays[one.stay], one.more_mm, *slip);
  }
  return result;
}

} // namespace sheerpole
