#include "backend/change/change_blocks.hpp"

#include "backend/change/change_words.hpp"
#include "backend/diagram/strip_drawings.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double strip_width = 180.0;

const Stay* find_stay(const CheckedRig& checked, const std::string& name) {
  const auto& stays = checked.rig().stays;
  const auto found =
      std::find_if(stays.begin(), stays.end(), [&](const Stay& stay) { return stay.name == name; });
  return found == stays.end() ? nullptr : &*found;
}

const Strip* strip_of(const CheckedRig& checked, const std::vector<Strip>& strips,
                      const std::string& name) {
  const Stay* stay = find_stay(checked, name);
  return stay == nullptr ? nullptr : find_strip(strips, *stay);
}

void add_stay(const StayWords& words, Document& document) {
  DocumentTable why{.caption = "Because", .columns = {{"what is stated otherwise", 1.0}}, .rows = {}};
  for (const std::string& one : words.why)
    why.rows.push_back({one});
  if (!why.rows.empty())
    document.blocks.emplace_back(std::move(why));
  DocumentTable lengths{
      .caption = "Lengths, mm",
      .columns = {{"length", 2.0}, {"was", 1.0, true}, {"is", 1.0, true}, {"change", 1.0, true}},
      .rows = {}};
  for (const LengthRow& row : words.lengths)
    lengths.rows.push_back({row.name, row.was, row.is, row.change});
  document.blocks.emplace_back(std::move(lengths));
  for (const std::string& line : words.lines)
    document.blocks.emplace_back(DocumentText{line + "."});
}

void add_list(const std::string& caption, const std::string& heading, const std::vector<std::string>& lines,
              Document& document) {
  if (lines.empty())
    return;
  DocumentTable table{.caption = caption, .columns = {{heading, 1.0}}, .rows = {}};
  for (const std::string& line : lines)
    table.rows.push_back({line});
  document.blocks.emplace_back(std::move(table));
}

std::vector<std::string> messages(const std::vector<const Diagnostic*>& findings) {
  std::vector<std::string> lines;
  for (const Diagnostic* finding : findings)
    lines.push_back(finding->message + " (" + finding->slug + ")");
  return lines;
}

} // namespace

void add_change(const CheckedRig& was, const CheckedRig& is, Document& document) {
  const RigChange change = compare_rigs(was.rig(), was.derived(), is.rig(), is.derived());
  const FindingsChange findings = findings_change(was, is);
  const std::vector<Strip> old_strips = strip_contents(was);
  const std::vector<Strip> new_strips = strip_contents(is);
  if (change.stays.empty())
    document.blocks.emplace_back(DocumentText{"No stay has to be made or set otherwise."});
  for (const StayWords& words : stay_words(change)) {
    document.blocks.emplace_back(DocumentHeading{
        words.name + (words.title.empty() ? "" : ": " + words.title) +
            (words.side.empty() ? "" : ", " + words.side) + (words.kind.empty() ? "" : ", " + words.kind),
        3, "change-" + words.name});
    add_stay(words, document);
    for (const auto& [strip, word] : {std::pair(strip_of(was, old_strips, words.change.stay), "WAS"),
                                      std::pair(strip_of(is, new_strips, words.change.stay), "IS")})
      if (strip != nullptr)
        document.blocks.emplace_back(DocumentFigure{strip_drawing(*strip, strip_width, word), ""});
  }
  std::vector<std::string> unmoved;
  for (const ChangedInput& input : change.without_move)
    unmoved.push_back(input_words(input));
  add_list("Stated otherwise, and moves no length", "what", unmoved, document);
  add_list("Parts", "more or fewer", parts_words(change), document);
  add_list("Line to order", "line", order_words(change), document);
  add_list("Findings that are new", "finding", messages(findings.appeared), document);
  add_list("Findings that are gone", "finding", messages(findings.gone), document);
}

} // namespace sheerpole
