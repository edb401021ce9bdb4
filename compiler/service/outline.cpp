#include "service/outline.hpp"

#include "kinds/kind_row.hpp"
#include "syntax/written_words.hpp"

#include <algorithm>

namespace sheerpole::service {

namespace {

std::string with_title(std::string_view what, const std::optional<Text>& title) {
  return std::string(what) + (title ? (what.empty() ? "\"" : " \"") + title->text + "\"" : "");
}

std::string with_side(const Name& name, const Name& side) {
  return name.text + (side.missing() ? "" : "." + side.text);
}

OutlineItem item_of(const Declaration& declaration) {
  OutlineItem item;
  const Name& name = declaration.name.missing() ? declaration.kind : declaration.name;
  item.name = with_side(name, declaration.side);
  item.detail = with_title(declaration.name.missing() ? "" : declaration.kind.text, declaration.title);
  // A reading or a stack goes by what it is of.
  if (declaration.name.missing() && !declaration.of.missing())
    item.name += " of " + with_side(declaration.of, declaration.of_side);
  item.span = declaration.span;
  item.name_span = name.span;
  const KindRow* kind = find_kind(declaration.kind.text);
  item.sort = kind != nullptr && kind->inside ? OutlineSort::block : OutlineSort::declaration;
  for (const Entry& entry : declaration.block.entries) {
    if (const auto* inner = std::get_if<Declaration>(&entry))
      item.inside.push_back(item_of(*inner));
    const auto* point = std::get_if<Property>(&entry);
    if (point != nullptr && kind != nullptr && kind->free_properties && !point->name.missing())
      item.inside.push_back({with_side(point->name, point->side), with_title("", point->title),
                             OutlineSort::point, point->span, point->name.span});
  }
  return item;
}

} // namespace

std::string_view name_of(OutlineSort sort) {
  switch (sort) {
  case OutlineSort::file:
    return "file";
  case OutlineSort::let:
    return "let";
  case OutlineSort::declaration:
    return "declaration";
  case OutlineSort::block:
    return "block";
  case OutlineSort::point:
    return "point";
  case OutlineSort::expectation:
    return "expectation";
  }
  return "declaration";
}

std::vector<OutlineItem> outline(const OpenBoat& boat, SourceId source) {
  std::vector<OutlineItem> result;
  const SyntaxTree* tree = boat.tree(source);
  if (tree == nullptr)
    return result;
  for (const Statement& statement : tree->statements) {
    if (const auto* use = std::get_if<Use>(&statement); use != nullptr && !use->path.text.empty())
      result.push_back({use->path.text, "use", OutlineSort::file, use->span, use->path.span});
    else if (const auto* let = std::get_if<Let>(&statement); let != nullptr && !let->name.missing())
      result.push_back({let->name.text, "let", OutlineSort::let, let->span, let->name.span});
    else if (const auto* expect = std::get_if<Expect>(&statement);
             expect != nullptr && !expect->stay.missing())
      result.push_back({with_side(expect->stay, expect->side), "expect", OutlineSort::expectation,
                        expect->span, expect->stay.span});
    else if (const auto* declaration = std::get_if<Declaration>(&statement))
      if (!declaration->kind.missing())
        result.push_back(item_of(*declaration));
  }
  return result;
}

std::vector<Fold> folds(const SourceText& text) {
  const TextPlaces places(text.bytes());
  const auto line = [&](std::uint32_t byte) { return places.at_byte(byte).line; };
  std::vector<Fold> result;
  const auto add = [&](std::uint32_t first, std::uint32_t last, Fold::Sort sort) {
    if (last > first)
      result.push_back({first, last, sort});
  };
  std::vector<std::uint32_t> open;
  // A row of comments, and one of `use`, that the next word may still belong to.
  Fold comments{0, 0, Fold::Sort::comment};
  Fold uses{0, 0, Fold::Sort::uses};
  bool in_comments = false;
  bool in_uses = false;
  const auto end_row = [&](Fold& row, bool& inside) {
    if (inside)
      add(row.first, row.last, row.sort);
    inside = false;
  };
  const auto go_on = [&](Fold& row, bool& inside, std::uint32_t at) {
    if (inside && at != row.last + 1)
      end_row(row, inside);
    if (!inside)
      row.first = at;
    row.last = at;
    inside = true;
  };
  bool first_word = true;
  for (const WrittenWord& word : written_words(text)) {
    const std::uint32_t at = line(word.span.begin);
    const bool begins_line = first_word || word.line_ends > 0;
    first_word = false;
    if (word.kind == WordKind::comment) {
      if (begins_line)
        go_on(comments, in_comments, at);
      continue;
    }
    end_row(comments, in_comments);
    if (begins_line && text.text(word.span) == "use")
      go_on(uses, in_uses, at);
    else if (begins_line)
      end_row(uses, in_uses);
    if (word.kind == WordKind::opens_block || word.kind == WordKind::opens_bracket) {
      open.push_back(at);
    } else if ((word.kind == WordKind::closes_block || word.kind == WordKind::closes_bracket) &&
               !open.empty()) {
      add(open.back(), at, Fold::Sort::block);
      open.pop_back();
    }
  }
  end_row(comments, in_comments);
  end_row(uses, in_uses);
  std::stable_sort(result.begin(), result.end(), [](const Fold& a, const Fold& b) {
    return a.first != b.first ? a.first < b.first : a.last > b.last;
  });
  return result;
}

} // namespace sheerpole::service
