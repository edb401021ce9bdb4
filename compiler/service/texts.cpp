#include "service/texts.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

namespace {

bool is_inside_sign(std::string_view text, std::size_t at) {
  return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80;
}

} // namespace

Result<std::string, FileReader::Failure> Texts::read(const std::string& path, std::size_t limit) {
  if (const std::string* bytes = find(path)) {
    if (bytes->size() > limit)
      return Failure::too_large;
    return *bytes;
  }
  return behind_ != nullptr ? behind_->read(path, limit) : Failure::not_found;
}

std::string Texts::real_path(const std::string& path) {
  return behind_ != nullptr ? behind_->real_path(path) : FileReader::real_path(path);
}

void Texts::put(const std::string& path, std::string bytes) {
  if (behind_ != nullptr && !texts_.contains(path))
    by_real_path_[behind_->real_path(path)] = path;
  texts_[path] = std::move(bytes);
}

void Texts::drop(const std::string& path) {
  texts_.erase(path);
  std::erase_if(by_real_path_, [&](const auto& each) { return each.second == path; });
}

const std::string* Texts::find(const std::string& path) const {
  if (const auto found = texts_.find(path); found != texts_.end())
    return &found->second;
  if (behind_ == nullptr || by_real_path_.empty())
    return nullptr;
  const auto real = by_real_path_.find(behind_->real_path(path));
  return real == by_real_path_.end() ? nullptr : &texts_.at(real->second);
}

std::string with_edits(std::string_view file, std::string bytes, std::vector<TextEdit> edits) {
  std::erase_if(edits, [&](const TextEdit& edit) { return edit.file != file; });
  std::stable_sort(edits.begin(), edits.end(),
                   [](const TextEdit& a, const TextEdit& b) { return a.begin < b.begin; });
  for (auto edit = edits.rbegin(); edit != edits.rend(); ++edit) {
    const std::size_t begin = std::min<std::size_t>(edit->begin, bytes.size());
    const std::size_t end = std::clamp<std::size_t>(edit->end, begin, bytes.size());
    bytes.replace(begin, end - begin, edit->replacement);
  }
  return bytes;
}

TextEdit difference(const std::string& file, std::string_view was, std::string_view is) {
  const std::size_t shorter = std::min(was.size(), is.size());
  std::size_t same = 0;
  while (same < shorter && was[same] == is[same])
    ++same;
  while (same > 0 && (is_inside_sign(was, same) || is_inside_sign(is, same)))
    --same;
  std::size_t behind = 0;
  while (behind < shorter - same && was[was.size() - 1 - behind] == is[is.size() - 1 - behind])
    ++behind;
  while (behind > 0 && is_inside_sign(was, was.size() - behind))
    --behind;
  return {file, static_cast<std::uint32_t>(same), static_cast<std::uint32_t>(was.size() - behind),
          std::string(is.substr(same, is.size() - behind - same))};
}

} // namespace sheerpole::service
