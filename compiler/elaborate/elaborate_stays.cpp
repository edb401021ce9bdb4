#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "names/resolve_steps.hpp"

#include <algorithm>
#include <string_view>

namespace sheerpole {

namespace {

Passage read_passage(Elaboration& elaboration, const Stop& stop, bool at_end, const std::string& stay) {
  if (at_end) {
    // At a tip `ends` says what the end of the path says as well: the next stay goes on from there.
    if (!stop.passage.missing() && stop.passage.text != "ends")
      elaboration.sink.report(
          diagnose("passage-at-end", {{"word", stop.passage.text}, {"stay", stay}}).at(stop.passage.span));
    return Passage::end;
  }
  if (stop.passage.text == "free")
    return Passage::free;
  if (stop.passage.text == "clamped")
    return Passage::clamped;
  if (stop.passage.text == "ends") {
    elaboration.sink.report(diagnose("path-goes-on", {{"stay", stay}}).at(stop.passage.span));
    return Passage::end;
  }
  const Span after{stop.expression.span.source, stop.expression.span.end, stop.expression.span.end};
  elaboration.sink.report(diagnose("passage-not-stated", {{"stay", stay}})
                              .at(stop.expression.span)
                              .about(stay)
                              .edit(after, " free", "if the line runs through freely, write `free`"));
  return Passage::free;
}

/// Whether the stack of a stay ends in a junction there.
bool ends_in_junction(const Elaboration& elaboration, const ResolvedDeclaration* stack, WhichEnd where) {
  if (stack == nullptr || stack->items.empty())
    return false;
  const ResolvedItem& item = where == WhichEnd::upper ? stack->items.front() : stack->items.back();
  const auto part = elaboration.parts.find(item.part.value);
  return !item.line && part != elaboration.parts.end() &&
         elaboration.rig[part->second].kind == PartKind::junction;
}

std::vector<PathStop> read_path(Elaboration& elaboration, const Value& value, Side side,
                                const std::string& stay, const ResolvedDeclaration* stack) {
  std::vector<PathStop> path;
  if (value.shape != ValueShape::path) {
    elaboration.sink.report(diagnose("path-too-short", {{"stay", stay}}).at(value.span));
    return path;
  }
  for (std::size_t i = 0; i < value.stops.size(); ++i) {
    const Stop& stop = value.stops[i];
    const bool at_end = i == 0 || i + 1 == value.stops.size();
    const Passage passage = read_passage(elaboration, stop, at_end, stay);
    const bool shared =
        at_end && ends_in_junction(elaboration, stack, i == 0 ? WhichEnd::upper : WhichEnd::lower);
    const auto point = elaboration.point_on(stop.expression, side, stay, shared);
    if (!point)
      continue;
    if (!path.empty() && path.back().point == *point)
      elaboration.sink.report(
          diagnose("path-repeats-point", {{"point", elaboration.rig[*point].base}, {"stay", stay}})
              .at(stop.expression.span)
              .and_at(path.back().place, "the same point here"));
    path.push_back({*point, passage, stop.expression.span});
  }
  return path;
}

/// What the stay states on one side: what that side states apart, over the rest.
ResolvedDeclaration on_side(const ResolvedDeclaration& declaration, Side side) {
  ResolvedDeclaration result = declaration;
  for (const ResolvedDeclaration& apart : declaration.apart)
    if (apart.syntax->side.text == name_of(side))
      lay_over(result, apart);
  return result;
}

bool has_apart(const ResolvedDeclaration& declaration, Side side) {
  return std::any_of(declaration.apart.begin(), declaration.apart.end(),
                     [&](const auto& apart) { return apart.syntax->side.text == name_of(side); });
}

void report_foreign_sides(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                          const std::vector<Side>& sides) {
  for (const ResolvedDeclaration& apart : declaration.apart) {
    const bool known = std::any_of(sides.begin(), sides.end(),
                                   [&](Side side) { return name_of(side) == apart.syntax->side.text; });
    if (!known)
      elaboration.sink.report(diagnose("reading-of-no-side", {{"stay", elaboration.name_of(declaration)},
                                                              {"side", apart.syntax->side.text}})
                                  .at(apart.syntax->side.span)
                                  .and_at(elaboration.place_of(declaration), "the stay")
                                  .about(elaboration.name_of(declaration)));
  }
}

/// Reads the stay on one side; empty when it can not be, which has been reported.
std::optional<Stay> read_stay(Elaboration& elaboration, const ResolvedDeclaration& declaration, Side side) {
  const std::string base = elaboration.name_of(declaration);
  bool good = elaboration.has_required(declaration);
  const ResolvedDeclaration* stack = nullptr;
  std::vector<const ResolvedDeclaration*> changes;
  for (const ResolvedDeclaration& block : declaration.blocks) {
    if (block.kind->category == Category::changes)
      changes.push_back(&block);
    else if (stack == nullptr)
      stack = &block;
  }
  if (stack == nullptr) {
    if (!declaration.incomplete)
      elaboration.sink.report(
          diagnose("stack-missing", {{"stay", base}}).at(elaboration.place_of(declaration)).about(base));
    good = false;
  }
  Stay stay;
  stay.base = base;
  stay.name = side == Side::centre ? base : base + "." + std::string(name_of(side));
  stay.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  stay.side = side;
  stay.place = elaboration.place_of(declaration);
  read_fields(elaboration, declaration, base, stay);
  if (const ResolvedProperty* path = declaration.find("path"))
    stay.path = read_path(elaboration, path->syntax->value, side, base, stack);
  if (stack != nullptr) {
    stay.stack = elaborate_stack(elaboration, stay, *stack, changes);
    stay.stack_place = stack->syntax->kind.span;
  }
  stay.particulars = particulars_beside<Stay>(elaboration, declaration, base);
  for (const ResolvedProperty& property : declaration.properties)
    if (elaboration.read.is_trial(property.syntax->span))
      stay.trials.push_back(std::string(property.row->name) + " of " + stay.name);
  for (const ResolvedDeclaration& block : declaration.blocks)
    if (elaboration.read.is_trial(block.syntax->span))
      stay.trials.push_back(std::string(block.kind->name) + " of " + stay.name);
  if (const ResolvedProperty* replaces = declaration.find("replaces")) {
    const SymbolId old = elaboration.tree.symbol_at(replaces->syntax->value.expression().span);
    if (const auto material = elaboration.materials.find(old.value);
        material != elaboration.materials.end())
      stay.replaces = material->second;
  }
  const ResolvedProperty* line = declaration.find("line");
  if (line == nullptr || !good)
    return std::nullopt;
  const SymbolId id = elaboration.tree.symbol_at(line->syntax->value.expression().span);
  const auto material = elaboration.materials.find(id.value);
  if (material == elaboration.materials.end())
    return std::nullopt; // reported; without a line there is no stay
  stay.material = material->second;
  return stay;
}

void add_stay(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const std::vector<Side> sides = sides_of(elaboration, declaration, {Side::centre});
  report_foreign_sides(elaboration, declaration, sides);
  bool refused = false;
  for (const Side side : sides) {
    const bool apart = has_apart(declaration, side);
    const ResolvedDeclaration stated = apart ? on_side(declaration, side) : declaration;
    refused = refused || refuse_unexplained_cut(elaboration, stated);
    auto stay = read_stay(elaboration, stated, side);
    if (!stay)
      continue;
    stay->apart = apart;
    elaboration.stays[declaration.symbol.value].push_back(
        StayId{static_cast<std::uint32_t>(elaboration.rig.stays.size())});
    elaboration.rig.stays.push_back(std::move(*stay));
  }
}

/// What counts knots belongs to a cord, and a cord to a messenger.
void check_cord(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const std::string& stay = declaration.syntax->of.text;
  const ResolvedProperty* cord = declaration.find("cord");
  if (cord == nullptr) {
    for (const std::string_view name : {"knots", "below-knot"})
      if (const ResolvedProperty* property = declaration.find(name)) {
        elaboration.sink.report(
            diagnose("knots-without-cord", {{"stay", stay}, {"property", std::string(name)}})
                .at(property->syntax->span)
                .about(stay));
        return;
      }
    return;
  }
  const ResolvedProperty* method = declaration.find("method");
  if (method == nullptr)
    return;
  const Expression& stated = method->syntax->value.expression();
  const bool known = std::find(reading_method_names.begin(), reading_method_names.end(), stated.text) !=
                     reading_method_names.end();
  if (known && stated.text != name_of(ReadingMethod::messenger))
    elaboration.sink.report(diagnose("cord-by-other-method", {{"stay", stay}, {"method", stated.text}})
                                .at(cord->syntax->span)
                                .and_at(stated.span, "the method")
                                .about(stay)
                                .edit(stated.span, std::string(name_of(ReadingMethod::messenger)),
                                      "if it was the cord that was hoisted, write `messenger`"));
}

Reading read_reading(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  Reading reading;
  reading.place = declaration.syntax->kind.span;
  const std::string owner = "the reading of " + declaration.syntax->of.text;
  read_fields(elaboration, declaration, owner, reading);
  reading.particulars = particulars_beside<Reading>(elaboration, declaration, owner);
  // A run that was read off a tape is measured, whether the file says so or not.
  for (std::vector<Sourced<Length>>* lengths : {&reading.runs, &reading.cord_lengths})
    for (Sourced<Length>& run : *lengths) {
      if (run.provenance.source_class != SourceClass::unstated)
        continue;
      run.provenance.source_class = SourceClass::measured;
      run.provenance.note = name_of(reading.method);
      for (const std::string& more : {reading.by, reading.date})
        if (!more.empty())
          run.provenance.note += (run.provenance.note.empty() ? "" : ", ") + more;
    }
  return reading;
}

/// Why a property of a reading does nothing there; what states it is to know, before it is relied on.
struct IdleProperty {
  std::string_view property;
  std::string_view why;
};

std::vector<IdleProperty> idle_properties(const Reading& reading) {
  const auto by = [&](ReadingMethod method) { return reading.method == method; };
  const bool cord = by(ReadingMethod::unstated) || by(ReadingMethod::messenger);
  std::vector<IdleProperty> idle;
  if (!cord && !reading.mark.empty())
    idle.push_back({"mark", "only a messenger cord carries its length as a mark"});
  if (!cord && !reading.cord_lengths.empty())
    idle.push_back({"cord-length", "it is the length of a messenger cord"});
  if (!reading.runs.empty() && !reading.cord_lengths.empty())
    idle.push_back({"cord-length", "the runs are the length already"});
  if (by(ReadingMethod::laser) && find_fact(reading.particulars, fact_names.pull) != nullptr)
    idle.push_back({"pull", "light has no pull"});
  if (by(ReadingMethod::laser) && !reading.tape.empty())
    idle.push_back({"with", "a laser is no tape"});
  if (!by(ReadingMethod::old_stay) && !by(ReadingMethod::unstated) && reading.old_line)
    idle.push_back({"old-line", "only an old stay stretches as a stay does"});
  const bool spans = find_fact(reading.particulars, fact_names.spans) != nullptr;
  if (!spans && find_fact(reading.particulars, fact_names.slope) != nullptr)
    idle.push_back({"slope", "it is the slope of free spans, and none are stated"});
  if (!reading.is_mark_alone())
    return idle;
  // No tape was held to a cord that was not measured.
  if (!reading.tape.empty())
    idle.push_back({"with", "a cord without a number was held to no tape"});
  if (spans)
    idle.push_back({"spans", "a cord without a number was held to no tape"});
  if (find_fact(reading.particulars, fact_names.resolution) != nullptr)
    idle.push_back({"resolution", "a cord without a number was read off no scale"});
  return idle;
}

/// Whatever a reading states acts or is refused by its name.
void refuse_idle_properties(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                            const Reading& reading) {
  for (const IdleProperty& idle : idle_properties(reading)) {
    const ResolvedProperty* property = declaration.find(idle.property);
    if (property == nullptr)
      continue;
    elaboration.sink.report(diagnose("reading-property-idle", {{"stay", declaration.syntax->of.text},
                                                               {"property", std::string(idle.property)},
                                                               {"reason", std::string(idle.why)}})
                                .at(property->syntax->span)
                                .and_at(reading.place, "the reading")
                                .about(declaration.syntax->of.text));
  }
}

} // namespace

void elaborate_stays(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (declaration.kind->category == Category::stay && declaration.symbol != poison_symbol)
      add_stay(elaboration, declaration);
}

void elaborate_readings(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::reading)
      continue;
    const Reading reading = read_reading(elaboration, declaration);
    check_cord(elaboration, declaration);
    const std::string& name = declaration.syntax->of.text;
    if (!reading.says_a_length() && declaration.find("runs") == nullptr &&
        declaration.find("cord") == nullptr && declaration.find("cord-length") == nullptr &&
        declaration.find("knots") == nullptr && declaration.find("below-knot") == nullptr &&
        !declaration.incomplete)
      elaboration.sink.report(
          diagnose("reading-empty", {{"stay", name}}).at(declaration.syntax->kind.span).about(name));
    refuse_idle_properties(elaboration, declaration, reading);
    doubt_reading(elaboration, declaration, reading);
    const auto stays = elaboration.stays.find(declaration.of.value);
    if (declaration.of == poison_symbol || stays == elaboration.stays.end())
      continue;
    const Name& side = declaration.syntax->of_side;
    // One knot may stand for both sides of a pair when it is stated so.
    // Knots that could not be read have been reported, and say so as well.
    const bool for_both = side.missing() && !reading.cord.empty() && declaration.find("knots") != nullptr &&
                          reading.runs.empty();
    bool taken = false;
    for (const StayId id : stays->second) {
      Stay& stay = elaboration.rig.stays[id.index()];
      const bool centre = stay.side == Side::centre && side.missing();
      if (!centre && !for_both && (side.missing() || name_of(stay.side) != side.text))
        continue;
      stay.readings.push_back(reading);
      taken = true;
    }
    if (taken)
      continue;
    const Stay& first = elaboration.rig[stays->second.front()];
    auto builder = side.missing() ? diagnose("reading-needs-side", {{"stay", name}})
                                  : diagnose("reading-of-no-side", {{"stay", name}, {"side", side.text}});
    builder =
        std::move(builder).at(declaration.syntax->of.span).and_at(first.place, "the stay").about(name);
    if (side.missing()) {
      const Span after{declaration.syntax->of.span.source, declaration.syntax->of.span.end,
                       declaration.syntax->of.span.end};
      builder = std::move(builder).edit(after, ".starboard",
                                        "if it was the starboard one, write `" + name + ".starboard`");
    }
    elaboration.sink.report(std::move(builder));
  }
}

} // namespace sheerpole
