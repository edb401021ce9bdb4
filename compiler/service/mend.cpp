#include "service/mend.hpp"

#include "diagnostics/render.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

namespace sheerpole {

namespace {

/// Each round makes all edits that do not touch each other; a rig file has few that do. A row of signs of
/// which each round takes one, `;;;;`, is the longest way.
constexpr int most_rounds = 100;

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Hands out the mended text of a file where there is one.
class MendedReader final : public FileReader {
public:
  explicit MendedReader(FileReader& reader) : reader_(reader) {}

  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    auto found = bytes_.find(path);
    if (found == bytes_.end()) {
      auto result = reader_.read(path, limit);
      if (!result.ok())
        return result;
      found = bytes_.emplace(path, std::move(result.value())).first;
    }
    if (found->second.size() > limit)
      return Failure::too_large;
    return found->second;
  }

  const std::map<std::string, std::string>& bytes() const { return bytes_; }
  void restore(std::map<std::string, std::string> bytes) { bytes_ = std::move(bytes); }
  std::string& bytes_of(const std::string& path) { return bytes_.at(path); }

private:
  FileReader& reader_;
  std::map<std::string, std::string> bytes_; ///< each file is read once; what is mended is what was seen
};

/// An edit that was made, by its place in the text as it is after all edits so far.
struct Made {
  std::string file;
  std::size_t offset = 0; ///< in bytes behind the byte order mark
  std::string title;
};

/// How far a compilation came; later is better.
int phase_reached(const Compilation& compilation) {
  return compilation.checked ? 3 : compilation.names ? 2 : !compilation.trees.empty() ? 1 : 0;
}

bool is_worse(const Compilation& result, const Compilation& before) {
  const int reached = phase_reached(result);
  const int reached_before = phase_reached(before);
  if (reached != reached_before)
    return reached < reached_before;
  return count_severities(result.findings).errors > count_severities(before.findings).errors;
}

/// The certain edits in the order of file and place, none touching the one before it.
std::vector<Edit> edits_to_make(const Compilation& compilation, const MayChange& may_change) {
  std::vector<Edit> all;
  for (const Diagnostic& finding : compilation.findings)
    if (finding.edit && finding.edit->certain &&
        may_change((*compilation.sources)[finding.edit->span.source].name()))
      all.push_back(*finding.edit);
  std::stable_sort(all.begin(), all.end(), [](const Edit& a, const Edit& b) { return a.span < b.span; });
  std::vector<Edit> result;
  for (Edit& edit : all)
    if (result.empty() || result.back().span.source != edit.span.source ||
        (result.back().span.end <= edit.span.begin && result.back().span != edit.span))
      result.push_back(std::move(edit));
  return result;
}

std::string with_line_ends_of(std::string_view file, std::string_view text) {
  const std::size_t first = file.find('\n');
  const bool carriage_return = first != std::string_view::npos && first > 0 && file[first - 1] == '\r';
  std::string result;
  for (const char c : text) {
    if (c == '\n' && carriage_return)
      result += '\r';
    result += c;
  }
  return result;
}

void make(const std::vector<Edit>& edits, const SourceSet& sources, MendedReader& reader,
          std::vector<Made>& made) {
  // From the end to the start, so that the places of the others stay as they are.
  for (auto edit = edits.rbegin(); edit != edits.rend(); ++edit) {
    const std::string& name = sources[edit->span.source].name();
    std::string& bytes = reader.bytes_of(name);
    const std::size_t mark = bytes.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    const std::string replacement = with_line_ends_of(bytes, edit->replacement);
    bytes.replace(mark + edit->span.begin, edit->span.end - edit->span.begin, replacement);
    for (Made& each : made)
      if (each.file == name && each.offset >= edit->span.end)
        each.offset += replacement.size() - (edit->span.end - edit->span.begin); // may wrap on the way down
    made.push_back({name, edit->span.begin, edit->title});
  }
}

} // namespace

Mending mend(const std::string& path, FileReader& disk, const MayChange& may_change) {
  MendedReader reader(disk);
  Mending result;
  result.after = compile(path, reader);
  const std::map<std::string, std::string> original = reader.bytes();
  std::vector<Made> made;
  for (int round = 0; round < most_rounds; ++round) {
    const std::vector<Edit> edits = edits_to_make(result.after, may_change);
    if (edits.empty())
      break;
    auto bytes_before = reader.bytes();
    auto made_before = made;
    make(edits, *result.after.sources, reader, made);
    Compilation next = compile(path, reader);
    if (is_worse(next, result.after)) {
      reader.restore(std::move(bytes_before));
      made = std::move(made_before);
      break;
    }
    result.after = std::move(next);
  }

  const SourceSet& sources = *result.after.sources;
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const SourceText& text = sources[SourceId{i}];
    const auto before = original.find(text.name());
    const std::string& now = reader.bytes_of(text.name());
    // A file that could only be found after a mend was not there to be compared with.
    if (before != original.end() && before->second == now)
      continue;
    std::vector<Made> here;
    std::copy_if(made.begin(), made.end(), std::back_inserter(here),
                 [&](const Made& each) { return each.file == text.name(); });
    if (here.empty())
      continue;
    std::stable_sort(here.begin(), here.end(),
                     [](const Made& a, const Made& b) { return a.offset < b.offset; });
    for (Made& each : here)
      result.made.push_back(
          {each.file, text.position(static_cast<std::uint32_t>(each.offset)), std::move(each.title)});
    result.files.push_back({text.name(), now});
  }
  return result;
}

} // namespace sheerpole
