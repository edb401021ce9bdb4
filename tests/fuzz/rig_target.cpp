#include "diagnostics/sink.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/terminal.hpp"
#include "fuzz/targets.hpp"
#include "service/compile.hpp"

#include <pugixml.hpp>

namespace sheerpole::fuzz {

namespace {

constexpr const char* name = "boat.rig";

/// All phases, the findings in every form, and the layout.
Compilation read_text(const std::string& text) {
  OneTextReader reader(name, text);
  Compilation compilation = compile(name, reader, {.settings = {}, .folders = {}, .threads = 1});
  promise(compilation.has_errors || compilation.checked.has_value(), "no error, and no rig either");
  for (const char* form : {"text", "lines", "json", "sarif"})
    promise(compilation.findings.empty() || !show_findings(compilation, form, false).empty(),
            "findings of which nothing is said");
  if (compilation.checked)
    look_at_layout((*compilation.sources)[SourceId{0}]);
  return compilation;
}

std::string as_text(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

} // namespace

int try_text(const std::uint8_t* data, std::size_t size) {
  read_text(as_text(data, size));
  return 0;
}

int try_rig(const std::uint8_t* data, std::size_t size) {
  const Compilation compilation = read_text(as_text(data, size));
  if (!compilation.checked)
    return 0;
  const Backends backends = usual_backends();
  FileClaims claims;
  OutputBundle bundle;
  const std::string faults =
      make_papers(backends, {.checked = *compilation.checked}, claims, bundle, [](const auto&) {});
  promise(faults.empty(), faults);
  for (const OutputFile& file : bundle.files)
    if (file.name.ends_with(".svg")) {
      pugi::xml_document document;
      promise(static_cast<bool>(document.load_buffer(file.bytes.data(), file.bytes.size())),
              "a drawing that is no XML: " + file.name);
    }
  return 0;
}

} // namespace sheerpole::fuzz
