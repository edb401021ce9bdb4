#pragma once

#include "model/limits.hpp"
#include "model/particular.hpp"
#include "model/stay.hpp"
#include "source/span.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A declaration that is kept as written and read where it is needed: a shop, stock, a tape, a test splice.
struct Record {
  std::string kind;
  std::string name;
  std::string title;
  std::string of;                 ///< name of what it is of; may be empty
  std::vector<StayId> stays = {}; ///< when it is of a stay: each side that is meant
  std::vector<Particular> facts;
  Span place;
};

/// How one stay stands in a state.
struct StatePosition {
  StayId stay;
  std::vector<std::size_t> items;   ///< of the stack, whose setting differs
  std::vector<StackItem> as_set;    ///< these items as they are set here
  std::optional<PointId> stowed_at; ///< where it is made off when it is not in use
  std::string note;
  Span place;
};

/// A named position of the rig.
struct State {
  std::string name;
  std::string title;
  std::string note;
  std::vector<StatePosition> positions;
  Span place;
};

/// An owner's or a loft's own check, on one quantity of the stays or on one property of what is in the rig.
struct UserRule {
  std::string name;
  std::string title;
  std::string looks_at = "stays";            ///< stays, parts, lines, splices, spreaders
  std::string sort = {};                     ///< of parts and lines: the kind; empty: any
  std::vector<std::string> kinds = {};       ///< of parts and lines: the kinds that have the property
  std::string quantity;                      ///< word of stay_quantities(); empty: a property is looked at
  std::string property = {};                 ///< name of a property of what is looked at
  std::optional<Sourced<Quantity>> at_least; ///< of the dimension of the property, lengths for a quantity
  std::optional<Sourced<Quantity>> at_most;
  std::string is = {};       ///< what it should be; empty: anything
  std::string is_not = {};   ///< what it should not be
  bool to_be_stated = false; ///< what does not state it is found
  std::vector<StayId> stays; ///< empty: all; of parts and lines: those that are in these
  std::string severity;      ///< note, warning, error
  std::string message;
  std::string why = {};  ///< on the boat; may be empty
  std::string mend = {}; ///< what to do; may be empty
  bool active = true;
  Span place;
};

/// A finding that is left standing.
struct Waiver {
  std::string slug;
  std::string stay; ///< `cap-shroud`, `cap-shroud.port`; empty: any subject
  std::string reason;
  std::string by;
  std::string until; ///< ISO 8601
  Span place;
};

/// What a calculated value should come out as.
struct Expectation {
  std::vector<StayId> stays; ///< one a side
  std::string quantity;      ///< word of stay_quantities()
  Sourced<Length> value;     ///< has a tolerance
  Span place;
};

/// One entry of the inspection log.
struct Inspection {
  std::vector<StayId> stays;
  std::vector<PartId> between; ///< empty: the whole stay
  std::string date;            ///< ISO 8601
  std::string by;
  std::string condition; ///< good, watch, renew, not-accessible
  std::string note;
  Span place;
};

/// One value that is stated over another: by a layer, a sister ship, the command line.
struct Difference {
  std::string origin;   ///< `layer fitted`, `sister ship`, `command line`
  std::string subject;  ///< `plate-a.port`
  std::string property; ///< `place`
  std::string was;      ///< as written, with its source; empty when nothing was stated
  std::string is;       ///< as written, with its source; of a block what stands in it
  Span place;
};

} // namespace sheerpole
