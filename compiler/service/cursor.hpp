#pragma once

#include "kinds/kind_row.hpp"
#include "names/resolved_tree.hpp"
#include "source/source_text.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::service {

/// What may be written at a place of a text.
enum class Slot {
  nothing,   ///< a comment, a number, the name of something new
  path,      ///< in the quotes of `use`
  statement, ///< the beginning of a statement
  entry,     ///< the beginning of an entry of a block
  part,      ///< of a stack, behind `2 x`
  base,      ///< behind `from`
  target,    ///< behind `of`
  spar,      ///< behind `on`
  side,      ///< behind a point
  quantity,  ///< behind the stay of an `expect`
  setting,   ///< the name of a setting in brackets
  value,     ///< the beginning of a value or of one more of its elements
  after,     ///< behind a whole element of a value
  unit       ///< behind a number of a value
};

/// Where a place stands. It is told by the words before it alone, so that it is known in a text which is
/// half typed.
struct Cursor {
  Slot slot = Slot::nothing;
  Span word;                              ///< what has been typed of a word, or the whole word; empty: none
  const KindRow* kind = nullptr;          ///< of the innermost block
  std::vector<const KindRow*> kinds = {}; ///< of all blocks, from outside; null for a kind that is none
  /// Of value, after and unit: what is being stated; null where anything goes, as behind `let`.
  const PropertyRow* row = nullptr;
  std::span<const PropertyRow> rows = {}; ///< of a setting: those that may stand there
  std::string owner = {};                 ///< of a setting: the part or end before the bracket
  std::vector<std::string> stated = {};   ///< of a setting: those that stand before it
  std::string head = {};                  ///< of base and target: the kind of the declaration
  std::uint32_t block_begin = 0;          ///< of the innermost block: its brace
};

/// Looks at the words of the text before the byte `offset`. What a name in a stack stands for is asked of
/// `names`, which may be null.
Cursor cursor_at(const SourceText& text, std::uint32_t offset, const ResolvedTree* names);

/// The word that the offset is in or behind, as long as it is a name; empty where there is none.
Span word_at(const SourceText& text, std::uint32_t offset);

/// The symbol of this name; null when there is none.
const Symbol* find_symbol(const ResolvedTree* names, std::string_view name);

} // namespace sheerpole::service
