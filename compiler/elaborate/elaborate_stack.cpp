#include "elaborate/elaboration.hpp"

#include "elaborate/arithmetic.hpp"
#include "units/format_length.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace sheerpole {

namespace {

/// The bounds of a length added up; nothing when there are none.
std::optional<Length> bound_of(const Influences& influences) {
  if (influences.empty())
    return std::nullopt;
  Length sum;
  for (const Influence& influence : influences)
    sum += Length::metres(std::fabs(influence.amount));
  return sum;
}

class StackReader {
public:
  StackReader(Elaboration& elaboration, const Stay& stay, const ResolvedDeclaration& stack)
      : elaboration_(elaboration), stay_(stay.base), lower_end_aloft_(ends_on_mast(elaboration.rig, stay)),
        stack_(stack) {}

  std::vector<StackItem> run() {
    silent_ = stack_.incomplete;
    items_.reserve(stack_.items.size());
    for (const ResolvedItem& item : stack_.items) {
      const std::size_t before = items_.size();
      read_item(item);
      if (items_.size() > before)
        add_up(items_.back());
    }
    check_lines();
    check_boat_fittings();
    refuse_idle_settings();
    return std::move(items_);
  }

private:
  void add_up(const StackItem& item) {
    const bool fitted = elaboration_.stacked <= most_stacked;
    elaboration_.stacked += static_cast<std::size_t>(item.count);
    if (fitted && elaboration_.stacked > most_stacked)
      elaboration_.sink.report(
          diagnose("stacks-too-large", {{"stay", stay_}, {"limit", std::to_string(most_stacked)}})
              .at(item.place));
  }

  void read_item(const ResolvedItem& resolved) {
    StackItem item;
    item.place = resolved.syntax->name.span;
    item.count = read_count(resolved);
    if (resolved.line) {
      item.kind = StackItem::Kind::line;
      if (resolved.syntax->count)
        report(diagnose("line-counted", {{"stay", stay_}}).at(resolved.syntax->count->span));
      if (const ResolvedSetting* length = setting(resolved, "length")) {
        item.line_length =
            elaboration_.read.length(length->syntax->value, *length->row, "line in " + stay_);
        if (!item.line_length)
          silent_ = true;
      }
      if (const ResolvedSetting* material = setting(resolved, "material")) {
        const SymbolId id = elaboration_.tree.symbol_at(material->syntax->value.expression().span);
        if (const auto found = elaboration_.materials.find(id.value); found != elaboration_.materials.end())
          item.material = found->second;
      }
      read_in_hand(resolved, item);
      items_.push_back(std::move(item));
      return;
    }
    const auto part = elaboration_.parts.find(resolved.part.value);
    if (part == elaboration_.parts.end()) {
      silent_ = true; // reported where the part is declared, or as an unknown name
      return;
    }
    item.part = part->second;
    read_settings(resolved, item);
    items_.push_back(std::move(item));
  }

  /// What this piece is made of can be stated in one way only.
  void read_in_hand(const ResolvedItem& resolved, StackItem& item) {
    const ResolvedSetting* first = nullptr;
    for (const std::string_view way : {"in-hand", "in-hand-over", "stock"}) {
      const ResolvedSetting* found = setting(resolved, way);
      if (found == nullptr)
        continue;
      if (first != nullptr) {
        report(diagnose("in-hand-twice", {{"stay", stay_},
                                          {"first", std::string(first->row->name)},
                                          {"second", std::string(way)}})
                   .at(found->syntax->name.span, "a second statement")
                   .and_at(first->syntax->name.span, "the first one"));
        return;
      }
      first = found;
      const Value& value = found->syntax->value;
      if (way == "stock") {
        item.stock = elaboration_.tree[elaboration_.tree.symbol_at(value.expression().span)].name;
        item.stock_place = value.expression().span;
      } else
        (way == "in-hand" ? item.in_hand : item.in_hand_over) =
            elaboration_.read.length(value, *found->row, "line in " + stay_);
    }
  }

  int read_count(const ResolvedItem& resolved) {
    if (!resolved.syntax->count)
      return 1;
    Value value;
    value.stops.push_back({*resolved.syntax->count, {}});
    value.span = resolved.syntax->count->span;
    static constexpr PropertyRow row{.name = "number", .type = ValueType::count};
    const auto count = elaboration_.read.count(value, row, resolved.syntax->name.text);
    return count ? count->value : 1;
  }

  const ResolvedSetting* setting(const ResolvedItem& resolved, std::string_view name) {
    const ResolvedSetting* found = nullptr;
    for (const ResolvedSetting& candidate : resolved.settings) {
      if (candidate.row->name != name)
        continue;
      if (found != nullptr)
        report(diagnose("property-twice", {{"name", std::string(name)}})
                   .at(candidate.syntax->name.span, "stated again here")
                   .and_at(found->syntax->name.span, "stated here first"));
      else
        found = &candidate;
    }
    return found;
  }

  void read_settings(const ResolvedItem& resolved, StackItem& item) {
    const Part& part = elaboration_.rig[item.part];
    const std::string owner = part.name + " in " + stay_;
    if (const ResolvedSetting* passes = setting(resolved, "passes"))
      if (const auto count = elaboration_.read.count(passes->syntax->value, *passes->row, owner))
        item.passes = count->value;
    const ResolvedSetting* spare = setting(resolved, "spare-bury");
    const ResolvedSetting* splice = setting(resolved, "splice");
    const ResolvedSetting* removable = setting(resolved, "removable");
    if (spare != nullptr)
      item.spare_bury = elaboration_.read.length(spare->syntax->value, *spare->row, owner);
    if (spare != nullptr || splice != nullptr)
      of_ropes_end_.push_back({items_.size(), splice, spare, removable});
    if (splice != nullptr) {
      const SymbolId id = elaboration_.tree.symbol_at(splice->syntax->value.expression().span);
      const auto found = elaboration_.splices.find(id.value);
      if (found != elaboration_.splices.end())
        item.splice = found->second;
    }
    if (removable != nullptr) {
      item.removable = removable->syntax->value.expression().text == "yes";
      item.removable_place = removable->syntax->value.expression().span;
    }
    if (part.role == Part::Role::adjuster)
      read_adjuster(resolved, part, owner, item);
  }

  /// An adjuster without a stated setting has no length; nothing may be cut to it.
  void read_adjuster(const ResolvedItem& resolved, const Part& part, const std::string& owner,
                     StackItem& item) {
    const ResolvedSetting* open = setting(resolved, "open");
    const ResolvedSetting* length = setting(resolved, part.kind == PartKind::lashing ? "gap" : "length");
    if (const ResolvedSetting* hole = setting(resolved, "hole")) {
      if (length != nullptr)
        report(diagnose("adjuster-set-twice", {{"part", part.name}, {"stay", stay_}})
                   .at(length->syntax->name.span, "a second setting")
                   .and_at(hole->syntax->name.span, "the first one"));
      read_hole(*hole, part, owner, item);
      return;
    }
    if (open != nullptr && length != nullptr) {
      report(diagnose("adjuster-set-twice", {{"part", part.name}, {"stay", stay_}})
                 .at(length->syntax->name.span, "a second setting")
                 .and_at(open->syntax->name.span, "the first one"));
      return;
    }
    if (open == nullptr && length == nullptr) {
      if (!resolved.incomplete)
        report_not_set(resolved, part);
      return;
    }
    if (length != nullptr) {
      item.set_length = elaboration_.read.length(length->syntax->value, *length->row, owner);
      return;
    }
    item.open = elaboration_.read.ratio(open->syntax->value, *open->row, owner);
    if (!item.open)
      return;
    Sourced<Length> set;
    set.value = part.shortest->value + (part.longest->value - part.shortest->value) * item.open->value;
    set.provenance =
        combined(combined(part.shortest->provenance, part.longest->provenance), item.open->provenance);
    if (set.provenance.source_class == SourceClass::computed)
      set.provenance.note = "from the range of " + part.name;
    const double open_share = item.open->value;
    set.influences =
        merged(merged(part.shortest->influences, 1.0 - open_share, part.longest->influences, open_share),
               1.0, item.open->influences, (part.longest->value - part.shortest->value).metres());
    set.tolerance = bound_of(set.influences);
    set.provenance.written = item.open->provenance.written + " open";
    set.provenance.place = item.open->provenance.place;
    item.set_length = std::move(set);
  }

  /// Pinned in a hole: the shortest and so many steps.
  void read_hole(const ResolvedSetting& hole, const Part& part, const std::string& owner, StackItem& item) {
    const auto number = elaboration_.read.count(hole.syntax->value, *hole.row, owner);
    if (!number || !part.step)
      return;
    item.hole = number->value;
    Sourced<Length> set;
    set.value = part.shortest->value + part.step->value * (number->value - 1);
    set.provenance =
        combined(combined(part.shortest->provenance, part.step->provenance), number->provenance);
    if (set.provenance.source_class == SourceClass::computed)
      set.provenance.note = "from the holes of " + part.name;
    set.influences = merged(part.shortest->influences, 1.0, part.step->influences,
                            static_cast<double>(number->value - 1));
    set.tolerance = bound_of(set.influences);
    set.provenance.written = "hole " + number->provenance.written;
    set.provenance.place = number->provenance.place;
    item.set_length = std::move(set);
  }

  void report_not_set(const ResolvedItem& resolved, const Part& part) {
    const Length shortest = part.shortest->value;
    const Length longest = part.longest->value;
    const bool screw = part.kind == PartKind::turnbuckle;
    const bool holes = part.kind == PartKind::hole_adjuster;
    const std::string word = screw                            ? "open"
                             : holes                          ? "hole"
                             : part.kind == PartKind::lashing ? "gap"
                                                              : "length";
    const std::string value = screw   ? "50 %"
                              : holes ? middle_hole(part)
                                      : format_millimetres((shortest + longest) / 2.0) + " mm";
    const Span name = resolved.syntax->name.span;
    // With settings already there the edit goes in behind the opening bracket, else it brings its own pair.
    const bool has_settings = !resolved.settings.empty();
    const Span place = has_settings ? Span{name.source, resolved.settings.front().syntax->span.begin,
                                           resolved.settings.front().syntax->span.begin}
                                    : Span{name.source, name.end, name.end};
    const std::string text = has_settings ? word + ": " + value + ", " : " (" + word + ": " + value + ")";
    report(diagnose("adjuster-not-set", {{"part", part.name},
                                         {"stay", stay_},
                                         {"word", word},
                                         {"shortest", format_millimetres(shortest)},
                                         {"longest", format_millimetres(longest)},
                                         {"range", format_millimetres(longest - shortest)}})
               .at(name)
               .and_at(part.place, "its range is declared here")
               .about(stay_)
               .edit(place, text, "if it is set in the middle, write `" + word + ": " + value + "`"));
  }

  static std::string middle_hole(const Part& part) {
    const double holes = (part.longest->value - part.shortest->value).si() / part.step->value.si();
    return format_fixed(std::floor(holes / 2.0) + 1.0, 0);
  }

  void check_lines() {
    if (silent_)
      return; // a line whose own length could not be read would look like one that takes what is left
    const StackItem* free_line = nullptr;
    bool any = false;
    for (const StackItem& item : items_) {
      if (item.kind != StackItem::Kind::line)
        continue;
      any = true;
      if (item.line_length)
        continue;
      if (free_line != nullptr)
        report(diagnose("two-free-lines", {{"stay", stay_}})
                   .at(item.place, "a second one")
                   .and_at(free_line->place, "the first one"));
      free_line = &item;
    }
    if (free_line != nullptr)
      return;
    if (any)
      report(diagnose("no-free-line", {{"stay", stay_}}).at(stack_.syntax->kind.span));
    else
      report(diagnose("line-missing", {{"stay", stay_}}).at(stack_.syntax->kind.span));
  }

  /// A tang or a chainplate is one piece of the boat: it stands at one end of a stay, never at both or in
  /// between.
  void check_boat_fittings() {
    for (std::size_t i = 0; i < items_.size(); ++i) {
      const StackItem& item = items_[i];
      if (item.kind != StackItem::Kind::part ||
          elaboration_.rig[item.part].role != Part::Role::boat_fitting)
        continue;
      const Part& part = elaboration_.rig[item.part];
      const bool last = i + 1 == items_.size();
      const StackItem& first = items_.front();
      if (i > 0 && last && first.kind == StackItem::Kind::part && first.part == item.part) {
        // A tang is a type: where both ends are on masts there is one at each.
        if (part.kind != PartKind::tang || !lower_end_aloft_)
          report_both_ends(first, item, part);
      } else if (i > 0 && !last)
        report(diagnose("boat-fitting-inside",
                        {{"part", part.name}, {"kind", std::string(name_of(part.kind))}, {"stay", stay_}})
                   .at(item.place));
    }
  }

  /// What says how a rope's end is made, at an item of the stack.
  struct OfRopesEnd {
    std::size_t item;
    const ResolvedSetting* splice;
    const ResolvedSetting* spare;
    const ResolvedSetting* removable;
  };

  /// What is worn on the line lies between it and the part that its end goes round.
  bool is_beside_line(std::size_t item) const {
    const auto worn = [this](const StackItem& one) {
      return one.kind == StackItem::Kind::part && elaboration_.rig[one.part].role == Part::Role::worn;
    };
    std::size_t above = item;
    while (above > 0 && worn(items_[above - 1]))
      --above;
    std::size_t below = item + 1;
    while (below < items_.size() && worn(items_[below]))
      ++below;
    return (above > 0 && items_[above - 1].kind == StackItem::Kind::line) ||
           (below < items_.size() && items_[below].kind == StackItem::Kind::line);
  }

  void refuse_idle_settings() {
    for (const OfRopesEnd& end : of_ropes_end_) {
      if (!is_beside_line(end.item))
        for (const ResolvedSetting* stated : {end.splice, end.spare})
          refuse_idle(end, stated, "no line ends there");
      else if (end.splice == nullptr)
        refuse_idle(end, end.spare, "no splice is stated beside it");
      else
        refuse_idle(end, end.removable, "the end of the line is spliced round it");
    }
  }

  void refuse_idle(const OfRopesEnd& end, const ResolvedSetting* stated, const std::string& reason) {
    if (stated != nullptr)
      report(diagnose("part-property-idle",
                      {{"what", elaboration_.rig[items_[end.item].part].name + " in " + stay_},
                       {"property", std::string(stated->row->name)},
                       {"reason", reason}})
                 .at(stated->syntax->name.span)
                 .about(stay_));
  }

  /// A tang is aloft and a chainplate at the deck, so the other place is the one that was meant to hold
  /// something else: the first fitting of the other kind is offered there. Without one, that use is taken
  /// out.
  void report_both_ends(const StackItem& aloft, const StackItem& deck, const Part& part) {
    auto builder =
        diagnose("part-at-both-ends",
                 {{"part", part.name}, {"kind", std::string(name_of(part.kind))}, {"stay", stay_}})
            .at(deck.place, "again at the deck end")
            .and_at(aloft.place, "here aloft");
    const Span wrong = part.kind == PartKind::chainplate ? aloft.place : deck.place;
    for (const Part& candidate : elaboration_.rig.parts) {
      if (candidate.role != Part::Role::boat_fitting || candidate.kind == part.kind)
        continue;
      report(std::move(builder).edit(wrong, candidate.name,
                                     "if it is the one meant, write `" + candidate.name + "`"));
      return;
    }
    report(std::move(builder));
  }

  void report(DiagnosticBuilder&& builder) { elaboration_.sink.report(std::move(builder).about(stay_)); }

  /// Whether the lower end of a stay is on a spar that stands.
  static bool ends_on_mast(const Rig& rig, const Stay& stay) {
    if (stay.path.size() < 2)
      return false;
    const std::string& name = rig[stay.path.back().point].spar;
    return std::any_of(rig.spars.begin(), rig.spars.end(),
                       [&](const Spar& spar) { return spar.name == name && is_standing(spar.sort); });
  }

  Elaboration& elaboration_;
  std::string stay_;
  bool lower_end_aloft_ = false; ///< a stay from mast to mast, a diamond
  const ResolvedDeclaration& stack_;
  std::vector<StackItem> items_;
  std::vector<OfRopesEnd> of_ropes_end_;
  bool silent_ = false; ///< something is missing from the list that has been reported
};

/// Whether two settings of an adjuster say the same thing in two ways, so that one takes the other's place.
bool is_setting_of_length(std::string_view name) {
  return name == "open" || name == "length" || name == "gap" || name == "hole";
}

} // namespace

void change_items(Elaboration& elaboration, const std::string& stay, const ResolvedDeclaration& changes,
                  ResolvedDeclaration& stack) {
  for (const ResolvedItem& change : changes.items) {
    if (!change.line && change.part == poison_symbol)
      continue; // reported
    std::vector<ResolvedItem*> found;
    for (ResolvedItem& item : stack.items)
      if (item.line == change.line && (change.line || item.part == change.part))
        found.push_back(&item);
    if (found.size() != 1) {
      if (!stack.incomplete)
        elaboration.sink.report(diagnose(found.empty() ? "change-not-in-stack" : "change-not-one",
                                         {{"part", change.syntax->name.text}, {"stay", stay}})
                                    .at(change.syntax->name.span)
                                    .and_at(stack.syntax->kind.span, "the stack")
                                    .about(stay));
      continue;
    }
    std::vector<ResolvedSetting>& settings = found.front()->settings;
    for (const ResolvedSetting& setting : change.settings)
      std::erase_if(settings, [&](const ResolvedSetting& earlier) {
        return earlier.row->name == setting.row->name ||
               (is_setting_of_length(earlier.row->name) && is_setting_of_length(setting.row->name));
      });
    settings.insert(settings.end(), change.settings.begin(), change.settings.end());
  }
}

std::vector<StackItem> elaborate_stack(Elaboration& elaboration, const Stay& stay,
                                       const ResolvedDeclaration& stack,
                                       const std::vector<const ResolvedDeclaration*>& changes) {
  ResolvedDeclaration changed = stack;
  for (const ResolvedDeclaration* block : changes)
    change_items(elaboration, stay.base, *block, changed);
  return StackReader(elaboration, stay, changed).run();
}

} // namespace sheerpole
