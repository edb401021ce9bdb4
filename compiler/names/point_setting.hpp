#pragma once

#include "names/resolved_tree.hpp"
#include "source/source_set.hpp"
#include "syntax/syntax_tree.hpp"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// Whether a word of a path names a side: `port`, `starboard`.
bool is_side(const std::string& word);

/// Writes what is set of a point on the command line as statements of the language, over what the files
/// state of it in the end: with all layers up to `as_of`, each side as it stands.
class PointSettings {
public:
  PointSettings(const std::vector<std::shared_ptr<const SyntaxTree>>& trees, const SourceSet& sources,
                const std::string& as_of)
      : trees_(trees), sources_(sources), as_of_(as_of) {}

  /// `plate`, `plate.port`, `plate.z` or `plate.port.z`, cut at its dots, set to this value. A place for
  /// both sides that does not say so is mirrored where the file states both in one; of a coordinate the
  /// other two stay as they are, on each side. Empty where nothing of the kind can be set.
  std::string statements(const std::vector<std::string>& path, const std::string& value);

private:
  /// Where a point or one side of it stands: in the files, or by what was set before.
  struct Place {
    std::string begin; ///< of its statement: "points on mast { plate.port: "
    std::array<std::string, 3> at;
    std::string unit;
    bool mirrored = false;
  };

  const Symbol& symbol_of(const std::string& name);
  std::string begin_of(const std::string& subject, const Property& stated) const;
  std::optional<Place> written_place(const std::string& subject, const Property* stated) const;
  std::optional<Place> place_of(const Symbol& symbol, const std::string& side) const;
  std::string set_whole(const Symbol& symbol, const std::string& side, const Property& stated,
                        const std::string& value);
  std::string set_coordinate(const Symbol& symbol, const std::string& side, std::size_t axis,
                             const std::string& value);

  const std::vector<std::shared_ptr<const SyntaxTree>>& trees_;
  const SourceSet& sources_;
  const std::string& as_of_;
  std::optional<ResolvedTree> files_; ///< worked out when it is first asked for
  /// Of `plate` or `plate.port`, what was set of it so far; without coordinates where it was set, and not
  /// as three numbers. Nothing: a side that is no longer stated apart.
  std::map<std::string, std::optional<Place>> set_;
};

} // namespace sheerpole
