#include "service/compile.hpp"

#include "calculate/bench/restate_for_shop.hpp"
#include "calculate/calculate.hpp"
#include "diagnostics/sink.hpp"
#include "elaborate/elaborate.hpp"
#include "model/kind_words.hpp"
#include "names/read_files.hpp"
#include "names/resolve.hpp"
#include "names/what_if.hpp"
#include "rules/check.hpp"
#include "rules/check_table.hpp"
#include "service/missing_values.hpp"
#include "service/read_photographs.hpp"

#include <filesystem>
#include <utility>

namespace sheerpole {

namespace {

/// The same texts under names relative to the folder of the rig file: what is written into documents must
/// not depend on where the command was typed.
std::shared_ptr<const SourceSet> named_from_rig_folder(const SourceSet& sources, const std::string& root) {
  const std::filesystem::path folder = std::filesystem::path(root).lexically_normal().parent_path();
  auto result = std::make_shared<SourceSet>();
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const SourceText& text = sources[SourceId{i}];
    const std::filesystem::path path(text.name());
    const std::string name = folder.empty() || text.name() == "command line"
                                 ? path.generic_string()
                                 : path.lexically_relative(folder).generic_string();
    result->add(SourceText(text.id(), name, std::string(text.bytes()), text.marked()));
  }
  return result;
}

/// Trees of a boat with hundreds of stays are a quarter of all memory. Those of a usual one go with the
/// program, which costs nothing.
constexpr std::size_t worth_letting_go = std::size_t{1} << 17U;

std::size_t bytes_of(const SourceSet& sources) {
  std::size_t sum = 0;
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    sum += sources[SourceId{i}].bytes().size();
  return sum;
}

/// False when the rig can not be restated, which has been reported.
bool restate(Rig& rig, const std::string& shop, DiagnosticSink& sink) {
  const ShopFault fault = restate_for_shop(rig, shop);
  if (fault == ShopFault::none)
    return true;
  std::string shops;
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::shop)
      shops += (shops.empty() ? "" : ", ") + record.name;
  const std::string fault_words = fault == ShopFault::no_opening ? "it states no delivered-open"
                                  : shops.empty()                ? "the files state no shop"
                                                                 : "the shops are " + shops;
  auto builder = diagnose("shop-not-usable", {{"shop", shop}, {"fault", fault_words}});
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::shop && record.name == shop)
      builder = std::move(builder).at(record.place);
  sink.report(std::move(builder));
  return false;
}

void run(Compilation& compilation, const std::string& path, FileReader& reader,
         const CompileOptions& options, DiagnosticSink& sink) {
  compilation.trees = read_files(path, reader, options.folders, *compilation.sources, sink, options.kept);
  if (compilation.trees.empty())
    return;
  // A name that stands in a broken line would look unknown elsewhere; findings of the text come alone.
  if (sink.has_errors())
    return;
  const auto what_if = read_what_if(options.settings, options.wishes, compilation.trees,
                                    *compilation.sources, sink, options.as_of);
  if (sink.has_errors())
    return;
  compilation.names = resolve(compilation.trees, what_if, sink, options.as_of);
  Rig rig = elaborate(*compilation.names, *compilation.sources, sink);
  if (sink.has_errors())
    return;
  if (!options.rig_only && options.photographs)
    compilation.photographs = std::make_shared<const std::vector<Photograph>>(
        read_photographs(*compilation.names, *compilation.sources, path, reader, sink));
  if (options.rig_alone && bytes_of(*compilation.sources) > worth_letting_go) {
    compilation.names.reset();
    compilation.trees.clear();
  }
  if (!options.shop.empty() && !restate(rig, options.shop, sink))
    return;
  if (options.rig_only) {
    compilation.rig = std::make_shared<const Rig>(std::move(rig));
    return;
  }
  compilation.rig = std::make_shared<const Rig>(std::move(rig));
  compilation.derived = std::make_shared<const Derived>(
      calculate(*compilation.rig, options.threads,
                options.wanted == Wanted::counts ? DoubtFor::checks : DoubtFor::papers));
  compilation.results = std::make_shared<const CheckResults>(
      check(*compilation.rig, *compilation.derived, sink, options.wanted));
  compilation.checked = CheckedRig::make(named_from_rig_folder(*compilation.sources, path), compilation.rig,
                                         compilation.derived, sink.sorted(), compilation.results,
                                         limit_uses(), compilation.photographs);
}

} // namespace

Compilation compile(const std::string& path, FileReader& reader, const CompileOptions& options) {
  Compilation compilation;
  compilation.sources = std::make_shared<SourceSet>();
  DiagnosticSink sink;
  run(compilation, path, reader, options, sink);
  compilation.findings = sink.sorted();
  if (compilation.derived)
    suggest_missing_values(*compilation.rig, *compilation.derived, compilation.trees, *compilation.sources,
                           compilation.findings);
  compilation.has_errors = sink.has_errors();
  return compilation;
}

std::string called(const std::string& file, const CompileOptions& rig) {
  std::string name = file;
  if (!rig.as_of.empty())
    name += " as " + rig.as_of;
  for (std::size_t i = 0; i < rig.settings.size(); ++i)
    name += (i == 0 ? " with " : ", ") + rig.settings[i];
  return name;
}

} // namespace sheerpole
