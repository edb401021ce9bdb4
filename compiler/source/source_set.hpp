#pragma once

#include "source/source_text.hpp"

#include <deque>

namespace sheerpole {

/// All files of one compilation, in the order in which they were met. A SourceId is the place in this list.
class SourceSet {
public:
  SourceId next_id() const { return SourceId{static_cast<std::uint32_t>(texts_.size())}; }
  /// The text's id must be next_id(). References stay valid.
  const SourceText& add(SourceText text) { return texts_.emplace_back(std::move(text)); }
  const SourceText& operator[](SourceId id) const { return texts_[id.index()]; }
  std::size_t size() const { return texts_.size(); }

private:
  std::deque<SourceText> texts_;
};

} // namespace sheerpole
