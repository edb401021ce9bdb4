#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"
#include "diagnostics/diagnostic.hpp"
#include "source/source_set.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerpole {

/// Why there are no PDFs: "sheerpole-pdf is not beside sheerpole".
struct PdfFailure {
  std::string what;
};

/// A sign that none of the fonts of the papers has; U+FFFD is drawn for it.
struct MissingSign {
  char32_t sign = 0;
  std::string file;     ///< name of the PDF
  std::size_t page = 1; ///< the first on which it stands there
};

struct Pdfs {
  std::vector<OutputFile> files;
  std::vector<MissingSign> missing; ///< in the order of the files, then of the signs
};

/// Draws each paper as a PDF, in their order, through the program sheerpole-pdf that stands in the folder
/// of this executable; no other place is looked at. `date` is that of the documents, ISO 8601 or empty. The
/// same pages give the same bytes.
Result<Pdfs, PdfFailure> make_pdfs(const std::vector<PagedFile>& papers, const std::string& date);

/// What is to be said of PDFs.
struct PdfReport {
  std::vector<Diagnostic> findings; ///< one a sign that could not be drawn
  std::string fault;                ///< why there are none, a line; empty when they are there
};

/// Draws the papers of a bundle and puts the PDFs among its files. A sign that has no glyph is shown where
/// `sources` have it first.
PdfReport add_pdfs(OutputBundle& bundle, const std::string& date, const SourceSet& sources);

} // namespace sheerpole
