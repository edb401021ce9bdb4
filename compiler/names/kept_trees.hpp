#pragma once

#include "diagnostics/diagnostic.hpp"
#include "source/source_text.hpp"
#include "syntax/syntax_tree.hpp"

#include <cstddef>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// What reading one text gave: its tree and the findings of the text.
struct ParsedText {
  std::shared_ptr<const SyntaxTree> tree;
  std::vector<Diagnostic> findings;
};

/// Trees that are kept from one reading of a rig to the next: whoever types into one file has the others
/// read once. A tree is taken again when the file has the same name, place among the files and bytes.
class KeptTrees {
public:
  /// Reads the text, or takes what it gave before. `words_left` is what other files have left of
  /// `most_words`.
  ParsedText parsed(const SourceText& source, std::size_t words_left);

  /// How many texts were read, and how many times one was taken again.
  std::size_t read() const { return read_; }
  std::size_t taken_again() const { return taken_again_; }

private:
  struct Kept {
    std::string bytes;
    ParsedText parsed;
  };
  std::map<std::pair<std::string, SourceId>, Kept> kept_;
  std::size_t bytes_ = 0; ///< of all that is kept
  std::size_t read_ = 0;
  std::size_t taken_again_ = 0;
};

} // namespace sheerpole
