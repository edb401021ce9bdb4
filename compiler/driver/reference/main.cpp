// Writes the pages of docs that come from tables: write_reference FOLDER, for example write_reference docs.
#include "backend/backend.hpp"
#include "driver/reference/command_tree.hpp"
#include "driver/reference/pages.hpp"
#include "driver/terminal.hpp"
#include "driver/writing/write_bundle.hpp"

int main(int argument_count, char** arguments) {
  using namespace sheerpole;
  if (argument_count != 2) {
    print_error("write_reference FOLDER writes the pages made from tables, findings/, calculations/, "
                "language/, begin/ and commands/\n");
    return 2;
  }
  OutputBundle bundle;
  for (OutputFile& page : finding_pages())
    bundle.files.push_back({"findings/" + page.name, std::move(page.bytes)});
  for (OutputFile& page : begin_pages())
    bundle.files.push_back({"begin/" + page.name, std::move(page.bytes)});
  for (OutputFile& page : command_pages())
    bundle.files.push_back({"commands/" + page.name, std::move(page.bytes)});
  bundle.files.push_back({"calculations/thresholds.md", limits_page()});
  bundle.files.push_back({"language/kinds.md", kinds_page()});
  bundle.files.push_back({"language/glossary.md", glossary_page()});
  bundle.files.push_back({"language/completion.json", completion_json()});
  const auto written = write_bundle(bundle, arguments[1], {});
  if (!written.ok()) {
    print_error("write_reference: " + describe(written.error()) + "\n");
    return 2;
  }
  return 0;
}
