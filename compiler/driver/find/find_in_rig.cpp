#include "driver/find/find_in_rig.hpp"

#include "backend/paper_words.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/facts.hpp"
#include "kinds/kind_row.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <span>
#include <utility>

namespace sheerpole {

namespace {

/// A name or a text of a thing, by which it can be found.
struct Spoken {
  std::string_view what; ///< "title"
  std::string_view text;
  bool by_words = false; ///< it is enough that it has the words; else it must be the same
};

class Search {
public:
  Search(const Sought& sought, const Rig& rig, const SourceSet& sources)
      : sought_(sought), rig_(rig), sources_(sources) {}

  FoundInRig run() {
    for (const Stay& stay : rig_.stays)
      look_at(stay);
    found_.stays = rig_.stays.size();
    return std::move(found_);
  }

private:
  void look_at(const Stay& stay) {
    row_ = {};
    row_.boat = rig_.boat.title;
    row_.stay = stay.base;
    row_.side = name_of(stay.side);
    dated_ = false;
    by_text({{"name", stay.base}, {"name", stay.name}, {"title", stay.title, true}}, stay.particulars,
            stay.place);
    by_day(stay.particulars, properties_of("stay"));
    look_at(rig_[stay.material]);
    for (const StackItem& item : stay.stack) {
      row_.count = item.count;
      if (item.kind == StackItem::Kind::part)
        look_at(rig_[item.part]);
      else if (item.material)
        look_at(rig_[*item.material]);
      row_.count = 1;
      if (item.splice)
        look_at(rig_[*item.splice]);
      look_at_stock(item.stock, item.stock_place);
    }
    const StayId id{static_cast<std::uint32_t>(&stay - rig_.stays.data())};
    for (const PieceRecord& record : piece_records_of(rig_, id))
      look_at(record);
    found_.undated += dated_ ? 0U : 1U;
  }

  /// The stock that a piece is of, by its name, and all that its record says of itself.
  void look_at_stock(const std::string& name, Span place) {
    if (name.empty())
      return;
    row_.item = name;
    const Record* stock = find_record(rig_, RecordKind::stock, name);
    by_text({{"stock", name}}, stock == nullptr ? std::vector<Particular>() : stock->facts, place);
  }

  void look_at(const PieceRecord& record) {
    row_.item = "piece " + std::string(name_of(record.stage));
    by_text({{"batch", record.batch}, {"job", record.job}, {"by", record.by}}, {}, record.place);
    look_at_stock(record.stock, record.place);
    const auto day = parse_day(record.date);
    dated_ = dated_ || day;
    if (sought_.before && day && day->count < sought_.before->count)
      add(std::string(name_of(record.stage)), record.date, {}, record.place);
  }

  void look_at(const LineMaterial& line) {
    row_.item = line.name;
    by_text({{"name", line.name},
             {"kind", name_of(line.kind)},
             {"title", line.title, true},
             {"construction", line.construction.text, true},
             {"grade", line.grade, true}},
            line.particulars, line.place);
    if (is_sought_size(sought_, line.size))
      add("size", line.size.name, source_words(line.diameter.provenance), line.place);
    by_day(line.particulars, properties_of(name_of(line.kind)));
  }

  void look_at(const Part& part) {
    row_.item = part.name;
    by_text({{"name", part.name}, {"kind", name_of(part.kind)}, {"title", part.title, true}},
            part.particulars, part.place);
    const auto properties = properties_of(name_of(part.kind));
    for (const Particular& fact : part.particulars) {
      const PropertyRow* row = find_property(properties, fact.name);
      if (row != nullptr && row->type == ValueType::size)
        by_size(fact.name, fact.text, fact.value.provenance, part.place);
    }
    if (part.screw && is_sought_thread(sought_, part.screw->thread))
      add("thread", part.screw->thread.designation, source_words(part.screw->provenance),
          part.screw->provenance.place.value_or(part.place));
    look_at(part.upper, "upper", part);
    look_at(part.lower, "lower", part);
    const bool dated = dated_;
    by_day(part.particulars, properties);
    dated_ = dated; // the age of a part says nothing of the line
  }

  void look_at(const End& end, const std::string& which, const Part& part) {
    const EndRow* kind = find_end(name_of(end.type));
    if (kind == nullptr)
      return;
    const Span place = end.place.value_or(part.place);
    for (const EndDimension& dimension : end.dimensions) {
      const PropertyRow* row = find_property(kind->dimensions, name_of(dimension.name));
      const std::string what = std::string(name_of(dimension.name)) + " of its " + which + " end";
      const Provenance& provenance = dimension.length.provenance;
      if (row != nullptr && row->type == ValueType::size)
        by_size(what, dimension.text, provenance, place);
      if (row == nullptr || row->type != ValueType::thread)
        continue;
      if (const auto thread = parse_thread(dimension.text);
          thread.ok() && is_sought_thread(sought_, thread.value()))
        add(what, dimension.text, source_words(provenance), provenance.place.value_or(place));
    }
  }

  void look_at(const Splice& splice) {
    row_.item = splice.name;
    by_text({{"name", splice.name}, {"kind", "splice"}, {"title", splice.title, true}}, splice.particulars,
            splice.place);
  }

  void by_size(const std::string& what, const std::string& text, const Provenance& provenance, Span place) {
    if (const auto size = parse_named_size(text); size.ok() && is_sought_size(sought_, size.value()))
      add(what, text, source_words(provenance), provenance.place.value_or(place));
  }

  /// The first of the names that is sought, else the first text that is.
  void by_text(std::initializer_list<Spoken> names, const std::vector<Particular>& facts, Span place) {
    if (sought_.before)
      return;
    for (const Spoken& name : names) {
      if (!is_sought(sought_, name.text) && !(name.by_words && has_sought_words(sought_, name.text)))
        continue;
      add(std::string(name.what), std::string(name.text), {}, place);
      return;
    }
    for (const Particular& fact : facts) {
      if (fact.name == "note" || !is_sought(sought_, fact.text))
        continue;
      add(fact.name, fact.text, source_words(fact.value.provenance),
          fact.value.provenance.place.value_or(place));
      return;
    }
  }

  void by_day(const std::vector<Particular>& facts, std::span<const PropertyRow> properties) {
    for (const Particular& fact : facts) {
      const PropertyRow* row = find_property(properties, fact.name);
      if (row == nullptr || row->type != ValueType::date)
        continue;
      const auto day = parse_day(fact.text);
      dated_ = dated_ || day;
      if (sought_.before && day && day->count < sought_.before->count && fact.value.provenance.place)
        add(fact.name, fact.text, source_words(fact.value.provenance), *fact.value.provenance.place);
    }
  }

  static std::span<const PropertyRow> properties_of(std::string_view kind) {
    const KindRow* row = find_kind(kind);
    return row == nullptr ? std::span<const PropertyRow>() : row->properties;
  }

  void add(std::string matched, std::string value, std::string source, Span place) {
    FoundRow row = row_;
    row.matched = std::move(matched);
    row.value = std::move(value);
    row.source = std::move(source);
    const SourceText& text = sources_[place.source];
    row.place = text.name() + ":" + std::to_string(text.position(place.begin).line);
    found_.rows.push_back(std::move(row));
  }

  const Sought& sought_;
  const Rig& rig_;
  const SourceSet& sources_;
  FoundInRig found_;
  FoundRow row_;       ///< of the stay and the thing that are looked at
  bool dated_ = false; ///< whether anything says how old the stay is
};

char small(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Letters, figures and everything beyond ASCII.
bool is_of_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

/// The day in "before 2016-05-01" and "older than 2016-05-01"; empty text: it begins in another way.
std::string_view day_in(std::string_view text) {
  for (const std::string_view beginning : {"before ", "older than "})
    if (text.starts_with(beginning))
      return text.substr(beginning.size());
  return {};
}

} // namespace

FoundInRig find_in_rig(const Sought& sought, const Rig& rig, const SourceSet& sources) {
  return Search(sought, rig, sources).run();
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (is_of_word(small(c)))
      words.back() += small(c);
    else if (!words.back().empty())
      words.emplace_back();
  }
  if (words.back().empty())
    words.pop_back();
  return words;
}

Result<Sought, std::string> read_sought(const std::string& text) {
  Sought sought;
  sought.text = text;
  if (const std::string_view day = day_in(text); !day.empty()) {
    sought.before = parse_day(day);
    if (!sought.before)
      return "sheerpole: `" + text + "` needs a day such as 2016-05-01\n";
    return sought;
  }
  sought.words = words_of(text);
  if (sought.words.empty())
    return std::string("sheerpole: nothing is named that could be found; name a part, a kind, a size, a "
                       "batch or `before 2016-05-01`\n");
  if (auto size = parse_named_size(text); size.ok())
    sought.size = std::move(size.value());
  if (auto thread = parse_thread(text); thread.ok())
    sought.thread = std::move(thread.value());
  return sought;
}

bool is_sought(const Sought& sought, std::string_view text) {
  return std::equal(text.begin(), text.end(), sought.text.begin(), sought.text.end(),
                    [](char a, char b) { return small(a) == small(b); });
}

bool has_sought_words(const Sought& sought, std::string_view text) {
  if (sought.words.empty() || sought.size || sought.thread)
    return false;
  const std::vector<std::string> words = words_of(text);
  return std::all_of(sought.words.begin(), sought.words.end(), [&](const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  });
}

bool is_sought_size(const Sought& sought, const NamedSize& size) {
  return sought.size && same_size(*sought.size, size);
}

bool is_sought_thread(const Sought& sought, const Thread& thread) {
  constexpr double micrometre = 1e-6;
  const auto alike = [](Length a, Length b) { return std::abs((a - b).metres()) <= micrometre; };
  if (sought.thread && sought.thread->standard == thread.standard &&
      alike(sought.thread->diameter, thread.diameter) && alike(sought.thread->pitch, thread.pitch))
    return true;
  const bool inch = thread.standard.starts_with("ASME");
  return is_sought_size(
      sought,
      {thread.designation, inch ? NamedSize::System::inch : NamedSize::System::metric, thread.diameter});
}

} // namespace sheerpole
