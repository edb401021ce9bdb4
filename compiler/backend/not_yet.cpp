#include "backend/not_yet.hpp"

#include "backend/paper_words.hpp"
#include "units/format_length.hpp"
#include "wording/papers/papers_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace sheerpole {

std::vector<Awaited> awaited(const std::vector<DraftReason>& reasons) {
  std::vector<Awaited> all;
  for (const DraftReason& reason : reasons) {
    auto one = std::find_if(all.begin(), all.end(), [&](const Awaited& earlier) {
      return earlier.reason == reason.reason && earlier.mend == reason.mend;
    });
    if (one == all.end())
      one = all.insert(all.end(), {reason.reason, reason.mend, {}});
    if (std::find(one->pieces.begin(), one->pieces.end(), reason.subject) == one->pieces.end())
      one->pieces.push_back(reason.subject);
  }
  return all;
}

std::string reasons_counted(const std::vector<DraftReason>& reasons) {
  const std::size_t count = awaited(reasons).size();
  return fmt::format("{} {}", count, count == 1 ? say(PapersPhrase::reason) : say(PapersPhrase::reasons));
}

std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons) {
  struct SameMend {
    std::string mend;
    std::vector<std::string> reasons;
  };
  std::vector<SameMend> groups;
  for (const Awaited& one : awaited(reasons)) {
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const SameMend& earlier) { return earlier.mend == one.mend; });
    if (group == groups.end())
      group = groups.insert(groups.end(), {one.mend, {}});
    group->reasons.push_back(one.reason);
  }
  std::vector<std::string> lines;
  for (const SameMend& group : groups)
    lines.push_back(joined(group.reasons, "; ") + led_by(": ", group.mend));
  return lines;
}

std::string waiting_words(const CheckedRig& checked) {
  std::set<std::string> pieces;
  for (const DraftReason& reason : checked.draft_reasons())
    pieces.insert(reason.subject);
  if (pieces.empty())
    return {};
  const std::string reasons = reasons_counted(checked.draft_reasons());
  const bool one = awaited(checked.draft_reasons()).size() == 1;
  return say(PapersPhrase::for_cut_list_names, pieces.size(),
             pieces.size() == 1 ? say(PapersPhrase::piece_waits) : say(PapersPhrase::pieces_wait), reasons,
             one ? say(PapersPhrase::it) : say(PapersPhrase::them));
}

std::string about_metres(Length length) {
  constexpr double noise = 1e-6;
  return say(PapersPhrase::about_m, format_fixed(std::ceil(length.metres() * 10.0 - noise) / 10.0, 1));
}

} // namespace sheerpole
