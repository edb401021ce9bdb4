#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Adds what cairo 1.16 has no call for behind a PDF that it wrote, as an incremental update (ISO 32000-1,
/// 7.5.6): the language of its texts (14.9.2), that its title is shown in place of its file name (12.2),
/// and for each figure of its structure words for whoever cannot see it (14.9.3), in the order in which
/// cairo was given the figures. The PDF has a table of its objects, as cairo writes it up to 1.16. Returns
/// what is not as it has to be, or nothing.
std::optional<std::string> finish_pdf(std::string& pdf, std::string_view language,
                                      const std::vector<std::string>& figures);

} // namespace sheerpole
