#pragma once

#include "model/field.hpp"
#include "model/kind_words.hpp"
#include "model/limits.hpp"
#include "model/particular.hpp"
#include "model/remark.hpp"
#include "model/stay.hpp"
#include "source/span.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A declaration that is kept as written and read where it is needed: a shop, stock, a tape, a test splice.
struct Record {
  RecordKind kind = RecordKind::shop;
  std::string name;
  std::string title;
  std::string of;                 ///< name of what it is of; may be empty
  std::vector<StayId> stays = {}; ///< when it is of a stay: each side that is meant
  std::vector<Particular> facts;
  Span place;
};

constexpr auto fields_of(const Record*) {
  using enum FieldRole;
  return std::tuple(field("kind", "", &Record::kind, identity), field("name", "", &Record::name, identity),
                    field("title", "", &Record::title, identity), field("of", "", &Record::of, identity),
                    field("stays", "", &Record::stays, identity),
                    field("facts", "", &Record::facts, geometry),
                    field("place", "", &Record::place, identity));
}
static_assert(all_members_are_listed<Record>());

/// How one stay stands in a state.
struct StatePosition {
  StayId stay;
  std::vector<std::size_t> items;   ///< of the stack, whose setting differs
  std::vector<StackItem> as_set;    ///< these items as they are set here
  std::optional<PointId> stowed_at; ///< where it is made off when it is not in use
  std::string note;
  Span place;
};

constexpr auto fields_of(const StatePosition*) {
  using enum FieldRole;
  return std::tuple(field("stay", "", &StatePosition::stay, identity),
                    field("items", "", &StatePosition::items, identity),
                    field("as_set", "", &StatePosition::as_set, geometry),
                    field("stowed_at", "stowed-at", &StatePosition::stowed_at, evidence),
                    field("note", "note", &StatePosition::note, for_record),
                    field("place", "", &StatePosition::place, identity));
}
static_assert(all_members_are_listed<StatePosition>());

/// A named position of the rig.
struct State {
  std::string name;
  std::string title;
  std::string note;
  std::string lowers;               ///< name of the spar that is turned about its heel; empty: none is
  std::optional<Sourced<Angle>> by; ///< the angle by which it is, from how it stands
  LoweredTowards towards = LoweredTowards::unstated;
  std::vector<StatePosition> positions;
  Span place;
};

constexpr auto fields_of(const State*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &State::name, identity), field("title", "", &State::title, identity),
      field("note", "note", &State::note, for_record), field("lowers", "lowers", &State::lowers, geometry),
      field("by", "by", &State::by, geometry), field("towards", "towards", &State::towards, geometry),
      field("positions", "", &State::positions, geometry), field("place", "", &State::place, identity));
}
static_assert(all_members_are_listed<State>());

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

constexpr auto fields_of(const UserRule*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &UserRule::name, identity), field("title", "", &UserRule::title, identity),
      field("looks_at", "looks-at", &UserRule::looks_at, evidence),
      field("sort", "sort", &UserRule::sort, evidence), field("kinds", "", &UserRule::kinds, identity),
      field("quantity", "quantity", &UserRule::quantity, evidence),
      field("property", "property", &UserRule::property, evidence),
      field("at_least", "at-least", &UserRule::at_least, evidence),
      field("at_most", "at-most", &UserRule::at_most, evidence), field("is", "is", &UserRule::is, evidence),
      field("is_not", "is-not", &UserRule::is_not, evidence),
      field("to_be_stated", "stated", &UserRule::to_be_stated, evidence),
      field("stays", "stays", &UserRule::stays, evidence),
      field("severity", "severity", &UserRule::severity, evidence),
      field("message", "message", &UserRule::message, evidence),
      field("why", "why", &UserRule::why, evidence), field("mend", "mend", &UserRule::mend, evidence),
      field("active", "active", &UserRule::active, evidence),
      field("place", "", &UserRule::place, identity));
}
static_assert(all_members_are_listed<UserRule>());

/// A finding that is left standing: one that does not block, or with `accepts` one that does.
struct Waiver {
  std::string slug;
  std::string stay; ///< `cap-shroud`, `cap-shroud.port`; empty: any subject
  std::string reason;
  std::string by;
  std::string until;    ///< ISO 8601
  bool accepts = false; ///< the finding is an error, which no longer blocks
  Span place;
};

constexpr auto fields_of(const Waiver*) {
  using enum FieldRole;
  return std::tuple(
      field("slug", "", &Waiver::slug, identity), field("stay", "", &Waiver::stay, identity),
      field("reason", "reason", &Waiver::reason, evidence), field("by", "by", &Waiver::by, evidence),
      field("until", "until", &Waiver::until, evidence), field("accepts", "", &Waiver::accepts, identity),
      field("place", "", &Waiver::place, identity));
}
static_assert(all_members_are_listed<Waiver>());

/// What a calculated value should come out as.
struct Expectation {
  std::vector<StayId> stays; ///< one a side
  std::string quantity;      ///< word of stay_quantities()
  Sourced<Length> value;     ///< has a tolerance
  Span place;
};

constexpr auto fields_of(const Expectation*) {
  using enum FieldRole;
  return std::tuple(field("stays", "", &Expectation::stays, identity),
                    field("quantity", "", &Expectation::quantity, identity),
                    field("value", "", &Expectation::value, evidence),
                    field("place", "", &Expectation::place, identity));
}
static_assert(all_members_are_listed<Expectation>());

/// One entry of the inspection log.
struct Inspection {
  std::vector<StayId> stays;
  std::vector<PartId> between; ///< empty: the whole stay
  std::string date;            ///< ISO 8601
  std::string by;
  InspectionCondition condition = InspectionCondition::unstated;
  std::string note;
  std::vector<std::string> photos; ///< paths from the folder of the file that states them
  Span place;
};

constexpr auto fields_of(const Inspection*) {
  using enum FieldRole;
  return std::tuple(field("stays", "", &Inspection::stays, identity),
                    field("between", "between", &Inspection::between, evidence),
                    field("date", "date", &Inspection::date, evidence),
                    field("by", "by", &Inspection::by, evidence),
                    field("condition", "condition", &Inspection::condition, evidence),
                    field("note", "note", &Inspection::note, for_record),
                    field("photos", "photo", &Inspection::photos, for_record),
                    field("place", "", &Inspection::place, identity));
}
static_assert(all_members_are_listed<Inspection>());

/// What became of a piece: cut, made, fitted, settled. `number` is its line in the stack, from 1 aloft.
struct PieceRecord {
  StayId stay; ///< one side: a record of both is one of each
  PieceStage stage = PieceStage::unstated;
  std::optional<int> number;
  std::optional<Sourced<Length>> body; ///< bearing to bearing, as it came out
  std::optional<Sourced<Force>> pull;  ///< under which that was measured
  std::string date;                    ///< ISO 8601; may be empty, as the rest
  std::string by;
  std::string job;
  std::string stock; ///< name of a record of stock; of one that is used up, too
  std::string batch;
  std::string note;
  Span place;
};

constexpr auto fields_of(const PieceRecord*) {
  using enum FieldRole;
  return std::tuple(field("stay", "", &PieceRecord::stay, identity),
                    field("stage", "stage", &PieceRecord::stage, evidence),
                    field("number", "number", &PieceRecord::number, identity),
                    field("body", "body", &PieceRecord::body, evidence),
                    field("pull", "pull", &PieceRecord::pull, evidence),
                    field("date", "date", &PieceRecord::date, evidence),
                    field("by", "by", &PieceRecord::by, evidence),
                    field("job", "job", &PieceRecord::job, evidence),
                    field("stock", "stock", &PieceRecord::stock, evidence),
                    field("batch", "batch", &PieceRecord::batch, evidence),
                    field("note", "note", &PieceRecord::note, for_record),
                    field("place", "", &PieceRecord::place, identity));
}
static_assert(all_members_are_listed<PieceRecord>());

/// As what the boat is shown: designed, ordered, made or fitted.
struct Edition {
  std::string layer; ///< the last one that counts; empty: no layer states anything
  std::string date;  ///< of it, ISO 8601; empty: not stated
  bool held = false; ///< what comes after that layer was left out
};

constexpr auto fields_of(const Edition*) {
  using enum FieldRole;
  return std::tuple(field("layer", "", &Edition::layer, identity),
                    field("date", "", &Edition::date, identity),
                    field("held", "", &Edition::held, identity));
}
static_assert(all_members_are_listed<Edition>());

/// One value that is stated over another: by a layer, a sister ship, the command line, the shop for which
/// lengths are restated.
struct Difference {
  enum class Origin { layer, sister_ship, command_line, shop };
  Origin origin = Origin::layer;
  std::string origin_name; ///< of the layer or the shop: `fitted`
  std::string subject;     ///< `plate-a.port`; empty: the bench cards, of which a shop says the unit
  std::string property;    ///< `place`
  std::string was;         ///< as written, with its source; empty when nothing was stated
  std::string is;          ///< as written, with its source; of a block what stands in it
  std::string rounded_to;  ///< of the unit of bench cards: as written; may be empty
  Span place;
  bool idle = false; ///< of a named number that nothing uses: it changes nothing

  bool of_bench_cards() const { return subject.empty(); }
};

constexpr auto fields_of(const Difference*) {
  using enum FieldRole;
  return std::tuple(
      field("origin", "", &Difference::origin, identity),
      field("origin_name", "", &Difference::origin_name, identity),
      field("subject", "", &Difference::subject, identity),
      field("property", "", &Difference::property, identity), field("was", "", &Difference::was, evidence),
      field("is", "", &Difference::is, evidence),
      field("rounded_to", "", &Difference::rounded_to, evidence),
      field("idle", "", &Difference::idle, identity), field("place", "", &Difference::place, identity));
}
static_assert(all_members_are_listed<Difference>());

} // namespace sheerpole
