#include "backend/page/html_pages.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "backend/page/html_text.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

namespace sheerpole {

std::string html_of_pages(const std::string& title, const std::vector<Drawing>& pages) {
  const double width = pages.empty() ? 210.0 : pages.front().width;
  const double height = pages.empty() ? 297.0 : pages.front().height;
  std::string html = fmt::format(
      "<!DOCTYPE html>\n"
      "<html lang=\"en\">\n"
      "<head>\n"
      "<meta charset=\"utf-8\">\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
      "<title>{0}</title>\n"
      "<style>\n"
      "@page {{ size: {1}mm {2}mm; margin: 0; }}\n"
      "body {{ margin: 0; background: #ffffff; color: #000000; font-family: sans-serif; }}\n"
      "h1 {{ position: absolute; left: -100vw; }}\n"
      "section {{ width: {1}mm; margin: 0 auto; break-after: page; }}\n"
      "section:last-child {{ break-after: auto; }}\n"
      "svg {{ display: block; max-width: 100%; height: auto; }}\n"
      "@media screen {{ section {{ border: 1px solid #707070; margin: 8px auto; max-width: 98vw; }} }}\n"
      "</style>\n"
      "</head>\n"
      "<body>\n"
      "<main>\n"
      "<h1>{0}</h1>\n",
      html_text(title), format_number(width), format_number(height));
  for (std::size_t i = 0; i < pages.size(); ++i)
    html += fmt::format("<section aria-label=\"{}\">\n{}</section>\n", html_text(pages[i].title),
                        write_svg_element(pages[i], fmt::format("page-{}-", i + 1)));
  return html + "</main>\n</body>\n</html>\n";
}

} // namespace sheerpole
