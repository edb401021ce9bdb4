// From the rig file to all its papers, as files in memory and as PDFs.

#include "driver/built_in_backends.hpp"
#include "driver/make_pdfs.hpp"
#include "service/compile.hpp"

#include <benchmark/benchmark.h>

#include <iterator>
#include <string>

namespace sheerpole::bench {
namespace {

const std::string grisolde = std::string(SHEERPOLE_EXAMPLES_DIR) + "/grisolde.rig";

OutputBundle papers_of(const CheckedRig& checked) {
  OutputBundle bundle;
  for (const auto& backend : usual_backends()) {
    OutputBundle made = backend->generate({checked});
    std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
    std::move(made.papers.begin(), made.papers.end(), std::back_inserter(bundle.papers));
  }
  return bundle;
}

/// Rig file read, checked, all papers made.
void papers_of_grisolde(benchmark::State& state) {
  for (auto _ : state) {
    DiskFileReader reader;
    const Compilation compilation = compile(grisolde, reader);
    if (!compilation.checked) {
      state.SkipWithError("grisolde.rig has an error");
      return;
    }
    benchmark::DoNotOptimize(papers_of(*compilation.checked).files.size());
  }
}
BENCHMARK(papers_of_grisolde)->Unit(benchmark::kMillisecond);

/// The same with every paper as a PDF, by sheerpole-pdf beside this program. Its own time counts as well:
/// the clock on the wall is what is measured.
void papers_of_grisolde_with_pdfs(benchmark::State& state) {
  std::size_t pages = 0;
  for (auto _ : state) {
    DiskFileReader reader;
    const Compilation compilation = compile(grisolde, reader);
    if (!compilation.checked) {
      state.SkipWithError("grisolde.rig has an error");
      return;
    }
    const OutputBundle bundle = papers_of(*compilation.checked);
    const auto pdfs = make_pdfs(bundle.papers, "");
    if (!pdfs.ok()) {
      state.SkipWithError(pdfs.error().what.c_str());
      return;
    }
    pages = 0;
    for (const PagedFile& paper : bundle.papers)
      pages += paper.pages.size();
  }
  state.counters["pages"] = static_cast<double>(pages);
}
BENCHMARK(papers_of_grisolde_with_pdfs)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
} // namespace sheerpole::bench
