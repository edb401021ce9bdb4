#include "backend/card/card_release.hpp"
#include "wording/papers/papers_words.hpp"

#include <fmt/format.h>

namespace sheerpole {

void add_not_yet(std::string_view what, const std::vector<DraftReason>& reasons, PageFlow& page,
                 double size) {
  page.text(fmt::format("{}  {}", what, not_yet()), {.size = size, .bold = true, .indent = 0.0});
  page.text(say(PapersPhrase::it_waits_for, reasons_counted(reasons)),
            {.size = 3.6, .bold = true, .indent = 0.0});
}

void add_release(const std::vector<DraftReason>& reasons, std::string_view meanwhile, PageFlow& page) {
  page.heading(say(PapersPhrase::what_releases_this_card), 4.2);
  FlowTable table{
      .columns = {{"", 0.4}, {say(PapersPhrase::reason), 3.2}, {say(PapersPhrase::what_settles_it), 4.4}},
      .size = 3.3,
      .gutter = card_gutter};
  std::size_t number = 0;
  for (const Awaited& one : awaited(reasons))
    table.rows.push_back({{.text = std::to_string(++number), .bold = true},
                          {.text = one.reason, .bold = true},
                          {.text = one.mend}});
  page.table(table);
  page.heading(say(PapersPhrase::meanwhile), 4.2);
  page.text(meanwhile, {.size = 3.4, .bold = false, .indent = 0.0});
}

} // namespace sheerpole
