#include "service/read_photographs.hpp"

#include "base/byte_text.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <filesystem>
#include <memory>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

namespace files = std::filesystem;

/// Reads one after the other and keeps count of what they take.
class PhotographReader {
public:
  PhotographReader(const SourceSet& sources, const std::string& root, FileReader& reader,
                   DiagnosticSink& sink)
      : sources_(sources), folder_(files::path(root).lexically_normal().parent_path()), reader_(reader),
        sink_(sink) {}

  void read(const std::string& stated, Span at) {
    if (auto fault = try_to_read(stated, at))
      sink_.report(diagnose("photo-not-usable", {{"photo", stated.empty() ? "\"\"" : stated},
                                                 {"fault", std::string(service_words(*fault))}})
                       .at(at));
  }

  std::vector<Photograph> take() { return std::move(found_); }

private:
  std::optional<PhotoFault> try_to_read(const std::string& stated, Span at) {
    const files::path asked(stated);
    const files::path from = files::path(sources_[at.source].name()).parent_path();
    const files::path target = (from / asked).lexically_normal();
    if (stated.empty() || asked.is_absolute() || !is_inside(target))
      return PhotoFault::outside;
    const std::string path = target.generic_string();
    const auto again =
        std::find_if(found_.begin(), found_.end(), [&](const Photograph& one) { return one.path == path; });
    if (again != found_.end()) {
      again->named.push_back({stated, at});
      return std::nullopt;
    }
    if (found_.size() >= most_photographs)
      return PhotoFault::too_many;
    auto bytes = reader_.read(path, largest_photograph_bytes);
    if (!bytes.ok())
      return bytes.error() == FileReader::Failure::not_found   ? PhotoFault::not_found
             : bytes.error() == FileReader::Failure::too_large ? PhotoFault::too_large
                                                               : PhotoFault::not_readable;
    const auto head = picture_head(bytes.value());
    if (!head)
      return PhotoFault::no_picture;
    bytes_ += bytes.value().size();
    if (bytes_ > most_photograph_bytes)
      return PhotoFault::too_much;
    Photograph one;
    one.named.push_back({stated, at});
    one.path = path;
    one.name = folder_.empty() ? path : target.lexically_relative(folder_).generic_string();
    one.head = *head;
    one.digest = sha256(bytes.value());
    one.bytes = std::make_shared<const std::string>(std::move(bytes.value()));
    found_.push_back(std::move(one));
    return std::nullopt;
  }

  /// On the disk, links followed, so that none leads out.
  bool is_inside(const files::path& target) const {
    const files::path inside = real(target).lexically_relative(real(folder_));
    return !inside.empty() && *inside.begin() != "..";
  }
  files::path real(const files::path& path) const {
    return reader_.real_path(path.empty() ? "." : path.generic_string());
  }

  const SourceSet& sources_;
  files::path folder_; ///< of the rig file
  FileReader& reader_;
  DiagnosticSink& sink_;
  std::vector<Photograph> found_;
  std::size_t bytes_ = 0;
};

} // namespace

std::vector<Photograph> read_photographs(const ResolvedTree& tree, const SourceSet& sources,
                                         const std::string& root, FileReader& reader,
                                         DiagnosticSink& sink) {
  PhotographReader photographs(sources, root, reader, sink);
  for (const ResolvedDeclaration& declaration : tree.declarations) {
    const ResolvedProperty* photo =
        declaration.kind != nullptr && declaration.kind->category == Category::inspection
            ? declaration.find("photo")
            : nullptr;
    if (photo == nullptr)
      continue;
    for (const Stop& stop : photo->syntax->value.stops)
      if (stop.expression.kind == ExpressionKind::text)
        photographs.read(stop.expression.text, stop.expression.span);
  }
  return photographs.take();
}

} // namespace sheerpole
