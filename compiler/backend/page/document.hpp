#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/page/paper.hpp"

#include <memory>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace sheerpole {

/// A heading. Levels run from 2, as the title of the document is of level 1.
struct DocumentHeading {
  std::string text;
  int level = 2;
  std::string id = {}; ///< unique in the document; empty: nothing leads here
};

struct DocumentText {
  std::string text;
  bool small = false;
};

/// Words in a frame: what must not be missed.
struct DocumentNotice {
  std::string text;
};

/// Words, each with what is said of it.
struct DocumentFacts {
  std::vector<std::pair<std::string, std::string>> rows; ///< an empty second: a line to write on
};

struct DocumentColumn {
  std::string heading;
  double share = 1.0; ///< of the width on paper
  bool right = false; ///< numbers
};

/// Rows of finished text. The first column names its row.
struct DocumentTable {
  std::string caption; ///< what it shows; read out to whoever can not see the table
  std::vector<DocumentColumn> columns;
  std::vector<std::vector<std::string>> rows = {}; ///< each as long as `columns`
  std::vector<std::string> notes = {};
};

/// A drawing with words below it.
struct DocumentFigure {
  Drawing drawing;
  std::string caption;
};

/// A picture with words below it.
struct DocumentPicture {
  std::shared_ptr<const std::string> bytes; ///< of a JPEG or a PNG; not null
  bool jpeg = true;
  int width = 1; ///< pixels
  int height = 1;
  std::string words; ///< for whoever cannot see it
  std::string caption;
  std::string id = {};
};

/// Words with a line to write on behind them.
struct DocumentToWrite {
  std::vector<std::string> words;
};

using DocumentBlock = std::variant<DocumentHeading, DocumentText, DocumentNotice, DocumentFacts,
                                   DocumentTable, DocumentFigure, DocumentPicture, DocumentToWrite>;

/// A text to be read on a screen and on paper alike.
struct Document {
  std::string title;
  std::string name = {};          ///< of the paper, for the foot, which names the boat; empty: the title
  std::string about;              ///< a line below the title
  std::string foot;               ///< identity_words(): foot of the text and of each printed page
  std::vector<std::string> draft; ///< not empty: DRAFT at its head, with these reasons
  std::vector<DocumentBlock> blocks;
};

/// The document as pages of paper. A drawing that is wider or higher than the inside of a page is drawn
/// smaller; one that is not is drawn to its own size.
std::vector<Drawing> pages_of_document(const Document& document, PaperSize paper);

} // namespace sheerpole
