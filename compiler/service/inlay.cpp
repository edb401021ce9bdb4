#include "service/inlay.hpp"

#include "service/turns.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <map>

namespace sheerpole::service {

namespace {

/// What is said at one place, of each side.
struct Said {
  std::string side; ///< empty: on the centreline
  std::string words;
};

class Inlays {
public:
  Inlays(const OpenBoat& boat, SourceId source)
      : boat_(boat), rig_(*boat.compiled.rig), source_(source), pulls_(pull_words(boat)) {}

  std::vector<Inlay> run() {
    for (const DerivedStay& stay : boat_.compiled.derived->stays)
      add(stay);
    std::vector<Inlay> result;
    for (const auto& [place, all] : said_)
      result.push_back({place, words_of(all)});
    return result;
  }

private:
  void add(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    const std::string side = stay.name == stay.base ? "" : stay.name.substr(stay.base.size() + 1);
    std::string bodies;
    for (const Piece& piece : derived.pieces)
      bodies += (bodies.empty() ? "" : " + ") + sum_text(rig_, piece.body);
    std::string words = bodies.empty() ? "" : std::string(name_of(SumKind::body)) + " " + bodies;
    if (const auto pull = pulls_.find(derived.stay); pull != pulls_.end())
      words += (words.empty() ? "" : ", ") + pull->second;
    if (!words.empty())
      say(stay.place, side, std::move(words));
    for (const TakeUp& adjuster : derived.adjusters)
      say(stay.stack[adjuster.item].place, side,
          take_up_words(format_millimetres(adjuster.to_tighten) + " mm",
                        format_millimetres(adjuster.to_slacken) + " mm"));
  }
  void say(Span place, const std::string& side, std::string words) {
    if (place.source == source_)
      said_[place].push_back({side, std::move(words)});
  }
  static std::string words_of(const std::vector<Said>& all) {
    const bool alike = std::all_of(all.begin(), all.end(),
                                   [&](const Said& each) { return each.words == all.front().words; });
    if (alike)
      return all.front().words;
    std::string result;
    for (const Said& each : all)
      result += (result.empty() ? "" : "; ") + each.side + (each.side.empty() ? "" : ": ") + each.words;
    return result;
  }

  const OpenBoat& boat_;
  const Rig& rig_;
  SourceId source_;
  std::map<StayId, std::string> pulls_;
  std::map<Span, std::vector<Said>> said_;
};

} // namespace

std::vector<Inlay> inlays(const OpenBoat& boat, SourceId source) {
  if (!boat.compiled.checked)
    return {};
  return Inlays(boat, source).run();
}

} // namespace sheerpole::service
