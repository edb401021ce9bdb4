#include "backend/table/tune_tables.hpp"
#include "service/answer_json.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <string>

namespace sheerpole::service {

namespace {

using Kind = TuneQuantity::Kind;

/// What a turn of a stay is: "turn", "hole", or "mm" where nothing is turned.
std::string_view turned_word(const TuneStay& stay) {
  return stay.by_turns ? "turn" : stay.step_mm == 1.0 ? "mm" : "hole";
}

class TurnsJson {
public:
  TurnsJson(const OpenBoat& boat, const TunedRig& tuned, const TurnTrial& trial)
      : boat_(boat), rig_(*boat.compiled.rig), tuned_(tuned), trial_(trial) {}

  void write(Json& json) const {
    for (const TurnedAdjuster& adjuster : trial_.adjusters)
      json["adjusters"].push_back(adjuster_json(adjuster));
    for (const std::string& name : trial_.unknown)
      json["unknown"].push_back(name);
    for (const Remark& remark : trial_.trouble)
      json["trouble"].push_back(say(rig_, remark));
    for (std::size_t i = 0; i < tuned_.model.stays.size(); ++i)
      json["stays"].push_back(stay_json(i));
    for (std::size_t i = 0; i < tuned_.model.spars.size(); ++i)
      if (!value(Kind::head_aft, i, 0, trial_.now).is_null())
        json["masts"].push_back(mast_json(i));
    for (const std::size_t stay : trial_.went_slack)
      json["went_slack"].push_back(name(stay));
    json["edits"] = edits_json(boat_, trial_.edits);
    for (const NotWritten& one : trial_.not_written)
      json["not_written"].push_back({{"stay", name(one.stay)}, {"why", one.why}});
  }

private:
  const Stay& stay(std::size_t number) const { return rig_[tuned_.model.stays[number].stay]; }
  const std::string& name(std::size_t number) const { return stay(number).name; }

  /// Null when the rig has no such quantity, or does not stand.
  Json value(Kind kind, std::size_t number, std::size_t place, const std::vector<double>& of) const {
    for (std::size_t q = 0; q < of.size(); ++q)
      if (tuned_.quantities[q].kind == kind && tuned_.quantities[q].number == number &&
          tuned_.quantities[q].place == place)
        return of[q];
    return nullptr;
  }
  /// In the rig as it is, and with the turns.
  Json both(Kind kind, std::size_t number, std::size_t place) const {
    return {{"now", value(kind, number, place, trial_.now)},
            {"with", value(kind, number, place, trial_.with)}};
  }

  Json adjuster_json(const TurnedAdjuster& adjuster) const {
    const TuneStay& turned = tuned_.model.stays[adjuster.stay];
    return {
        {"stay", name(adjuster.stay)},
        {"base", stay(adjuster.stay).base},
        {"title", stay(adjuster.stay).title},
        {"part",
         rig_[boat_.compiled.derived->stays[turned.stay.index()].adjusters[*turned.adjuster].part].name},
        {"turned", turned_word(turned)},
        {"step_mm", turned.step_mm},
        {"least", adjuster.least_turns},
        {"most", adjuster.most_turns},
        {"turns", adjuster.turns},
        {"beyond", adjuster.beyond_thread}};
  }

  Json stay_json(std::size_t number) const {
    const TuneStay& of = tuned_.model.stays[number];
    const bool stands = trial_.trouble.empty();
    const statics::StayState& now = tuned_.state.stays[of.at_deck().index()];
    const statics::StayState& with = trial_.state.stays[of.at_deck().index()];
    Json json{{"name", name(number)},
              {"base", stay(number).base},
              {"title", stay(number).title},
              {"newtons", both(Kind::tension, number, 0)},
              {"slack_mm", {{"now", now.slack_mm}, {"with", stands ? Json(with.slack_mm) : Json()}}},
              {"break_newtons", of.break_newtons ? Json(*of.break_newtons) : Json()},
              {"aloft_newtons", Json::array()}};
    for (std::size_t i = 0; stands && i + 1 < of.legs.size(); ++i)
      json["aloft_newtons"].push_back(trial_.state.stays[of.legs[i].index()].tension_newtons);
    return json;
  }

  Json mast_json(std::size_t number) const {
    const TuneSpar& spar = tuned_.model.spars[number];
    Json bends = Json::array();
    for (std::size_t k = 0; k < spar.spreaders.size(); ++k)
      bends.push_back({{"at", rig_[spar.spreaders[k].root].base},
                       {"forward_mm", both(Kind::bend_forward, number, k)},
                       {"starboard_mm", both(Kind::bend_starboard, number, k)}});
    Json line = Json::array();
    if (trial_.trouble.empty())
      for (const statics::SparPlace& place : trial_.state.spars[spar.element.index()].places)
        line.push_back(
            {{"at_mm", place.at_mm}, {"aft_mm", -place.moved_mm.x}, {"starboard_mm", place.moved_mm.y}});
    return {{"name", rig_.spars[spar.spar].name},
            {"title", rig_.spars[spar.spar].title},
            {"head_aft_mm", both(Kind::head_aft, number, 0)},
            {"head_starboard_mm", both(Kind::head_starboard, number, 0)},
            {"bends", std::move(bends)},
            {"line", std::move(line)}};
  }

  const OpenBoat& boat_;
  const Rig& rig_;
  const TunedRig& tuned_;
  const TurnTrial& trial_;
};

/// What is not stated, and what else is in the way.
Json in_the_way_json(const Rig& rig, const TunedRig& tuned) {
  Json result = Json::array();
  for (const TuneInput& input : tuned.model.inputs)
    if (input.value.empty())
      result.push_back({{"of", say(rig, input.of)}, {"property", input.property}, {"words", ""}});
  for (const std::vector<Remark>* remarks : {&tuned.model.lacking, &tuned.trouble})
    for (const Remark& remark : *remarks)
      result.push_back({{"of", ""}, {"property", ""}, {"words", say(rig, remark)}});
  return result;
}

} // namespace

Json turns_json(const OpenBoat& boat, const TunedRig& tuned, const TurnTrial* trial) {
  const Rig& rig = *boat.compiled.rig;
  Json json{{"stands", trial != nullptr},
            {"draft", say_each(rig, tuned.model.draft)},
            {"in_the_way", in_the_way_json(rig, tuned)},
            {"cautions", tune_cautions()}};
  for (const char* list :
       {"adjusters", "unknown", "trouble", "stays", "masts", "went_slack", "edits", "not_written"})
    json[list] = Json::array();
  if (trial != nullptr)
    TurnsJson(boat, tuned, *trial).write(json);
  return json;
}

} // namespace sheerpole::service
