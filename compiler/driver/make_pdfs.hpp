#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Why there are no PDFs: "sheerpole-pdf is not beside sheerpole".
struct PdfFailure {
  std::string what;
};

/// Draws each paper as a PDF, in their order, through the program sheerpole-pdf that stands in the folder
/// of this executable; no other place is looked at. `date` is that of the documents, ISO 8601 or empty. The
/// same pages give the same bytes.
Result<std::vector<OutputFile>, PdfFailure> make_pdfs(const std::vector<PagedFile>& papers,
                                                      const std::string& date);

} // namespace sheerpole
