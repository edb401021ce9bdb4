#pragma once

#include "backend/json/json.hpp"
#include "base/result.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// Why there is no page: what to say.
struct NoPage {
  std::string words;
};

/// The offline page as text: the file named, else `sheerpole.html` beside this program, else that in
/// `share/sheerpole` where this program is installed. None when there is no file, and when the file is no
/// page that takes what is given to it.
Result<std::string, NoPage> read_page(const std::string& named);

/// The page with something given to it, which it opens instead of what the browser keeps. Nothing in the
/// texts can end the element that they stand in. The same page and JSON make the same bytes.
std::string page_given(std::string page, const Json& given);

/// The page with leave to ask who serves it, and nobody else.
std::string page_that_asks_its_server(std::string page);

/// Whether the page has a compiler inside.
bool has_compiler(std::string_view page);

} // namespace sheerpole
