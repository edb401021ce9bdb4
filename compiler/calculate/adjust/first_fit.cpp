#include "calculate/adjust/first_fit.hpp"

#include "calculate/adjust/account.hpp"

namespace sheerpole {

namespace {

constexpr Length noise_of_room = Length::millimetres(0.001);

bool goes_by_rule(const Piece& piece) {
  return piece.upper.by_first_creep || piece.lower.by_first_creep;
}

} // namespace

bool FirstFit::has_room() const {
  return !short_by || *short_by <= to_slacken + noise_of_room;
}

std::optional<FirstFit> first_fit(const Stay& stay, const std::vector<Piece>& pieces,
                                  const std::vector<TakeUp>& adjusters) {
  FirstFit result;
  bool any = false;
  bool known = true;
  Length sum;
  for (const Piece& piece : pieces)
    for (const PieceEnd* end : {&piece.upper, &piece.lower}) {
      if (!end->by_first_creep)
        continue;
      any = true;
      known = known && end->shortens_until_set;
      sum += end->shortens_until_set.value_or(Length{});
    }
  if (!any)
    return std::nullopt;
  if (known)
    result.short_by = sum;
  for (const TakeUp& adjuster : adjusters)
    result.to_slacken += adjuster.to_slacken * stay.stack[adjuster.item].count;
  return result;
}

void block_by_first_fit(const Stay& stay, const FirstFit& fit, std::vector<Piece>& pieces) {
  if (fit.has_room())
    return;
  for (Piece& piece : pieces)
    if (goes_by_rule(piece))
      piece.blocked.push_back({{AdjusterPhrase::first_fit_no_room, {*fit.short_by, fit.to_slacken}},
                               AdjusterPhrase::first_fit_mend,
                               stay.place});
}

} // namespace sheerpole
