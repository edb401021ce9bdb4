#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view mast_states[] = {"standing", "unstepped"};
constexpr std::string_view layers[] = {"designed", "ordered", "made", "fitted"};
constexpr std::string_view units[] = {"millimetres", "inches", "feet-and-inches"};
constexpr std::string_view stock_sorts[] = {"spool", "coil", "offcut"};
constexpr std::string_view severities[] = {"note", "warning", "error"};
constexpr std::string_view looked_at[] = {"stays", "parts", "lines", "splices", "spreaders"};
constexpr std::string_view yes[] = {"yes"};
constexpr std::string_view on_off[] = {"on", "off"};
constexpr std::string_view quantities[] = {"pin-to-pin", "body",       "cut",
                                           "to-tighten", "to-slacken", "engaged"};
constexpr std::string_view conditions[] = {"good", "watch", "renew", "not-accessible"};

constexpr PropertyRow layer[] = {
    recorded(date_row("date", Need::optional, "when it was so")),
    recorded(text_row("by", Need::optional, "\"owner\"", "who says so")),
    note_row("\"after the first season\"", "anything a reader should know"),
};

constexpr PropertyRow shop[] = {
    ratio_row("delivered-open", 0.0, 1.0, "50 %", "how far adjusters are open on stays as delivered"),
    length_row("round-to", Need::optional, 0.0001, 0.1, "1 mm", "what cut lengths are rounded to"),
    choice_row("unit", Need::optional, units, "millimetres", "the one unit of its bench cards"),
    note_row("\"closed Mondays\"", "anything a reader should know"),
};

constexpr PropertyRow stock[] = {
    choice_row("sort", Need::required, stock_sorts, "spool", "what it is"),
    length_row("length", Need::required, 0.001, 10000.0, "100 m", "length in hand"),
    {.name = "pieces", .type = count, .least = 1, .most = 1000, .example = "2", .help = "how many of them"},
    ratio_row("spare", 0.0, 10.0, "10 %", "share of it that is kept back as spare and not cut into"),
    text_row("batch", Need::optional, "\"coil 7\"", "the batch that it came from"),
    note_row("\"dry store\"", "anything a reader should know"),
};

constexpr PropertyRow word_row(std::string_view name, std::string_view example, std::string_view help) {
  return {.name = name, .type = word, .example = example, .help = help};
}

constexpr PropertyRow any_row(std::string_view name, std::string_view example, std::string_view help) {
  return {.name = name, .type = any, .example = example, .help = help};
}

constexpr PropertyRow rule[] = {
    choice_row("looks-at", Need::optional, looked_at, "parts", "what is looked at; not stated: stays"),
    word_row("sort", "turnbuckle", "of parts or lines only those of this kind; not stated: all"),
    choice_row("quantity", Need::optional, quantities, "body",
               "what is worked out of each stay and looked at; or state a property"),
    word_row("property", "locked", "the property that is looked at, by its name"),
    any_row("at-least", "20 mm", "the finding comes below this; of the unit of what is looked at"),
    any_row("at-most", "12 m", "the finding comes above this; of the unit of what is looked at"),
    word_row("is", "stainless", "the finding comes when it is stated as anything else"),
    word_row("is-not", "\"none\"", "the finding comes when it is stated as this"),
    choice_row("stated", Need::optional, yes, "yes", "the finding comes when it is not stated"),
    list_row("stays", Need::optional, Category::stay, "cap-shroud, forestay",
             "only these, or what is in these; not stated: all"),
    choice_row("severity", Need::required, severities, "warning", "how grave it is"),
    text_row("message", Need::required, "\"longer than our bench\"", "what the finding says"),
    text_row("why", Need::optional, "\"the last metre lies on the floor\"", "why it matters"),
    text_row("mend", Need::optional, "\"send it to the wire shop\"", "what to do about it"),
    choice_row("active", Need::optional, on_off, "off", "whether it is looked at; not stated: on"),
};

constexpr PropertyRow waive[] = {
    text_row("reason", Need::required, "\"checked with the maker\"", "why it is left standing"),
    text_row("by", Need::required, "\"owner\"", "who takes it on"),
    date_row("until", Need::required, "the last day; after it the finding comes back"),
};

constexpr PropertyRow survey[] = {
    recorded(date_row("date", Need::required, "the day on which she was looked at")),
    recorded(text_row("by", Need::required, "\"surveyor\"", "who looked")),
    recorded(text_row("qualification", Need::optional, "\"as on the letterhead\"", "of whoever looked")),
    recorded(
        text_row("for", Need::optional, "\"the owner\"", "for whom the report is, and for nobody else")),
    recorded(text_row("where", Need::optional, "\"ashore at Killary\"", "where she lay")),
    recorded(text_row("weather", Need::optional, "\"dry, light wind\"", "at that time")),
    recorded(choice_row("mast", Need::optional, mast_states, "standing", "whether the mast stood or lay")),
    recorded(text_row("went", Need::optional, "\"aloft to the hounds; deck; below deck\"",
                      "how far whoever looked got")),
    recorded(text_row("not-seen", Need::optional, "\"chainplates below deck, under covers\"",
                      "what was not seen, not opened, not climbed to")),
    note_row("\"after a grounding\"", "what a reader should know"),
};

constexpr PropertyRow inspection[] = {
    list_row("between", Need::optional, Category::part, "tang-10, thimble-16",
             "the part, or the two parts of the joint; not stated: the whole stay"),
    date_row("date", Need::required, "when it was looked at"),
    text_row("by", Need::required, "\"owner\"", "who looked"),
    choice_row("condition", Need::required, conditions, "good", "what was found"),
    text_row("note", Need::optional, "\"pin polished on one side\"", "what was seen"),
    {.name = "photo",
     .type = text_list,
     .example = "\"photographs/forestay-tang.jpg\"",
     .help = "pictures of it, JPEG or PNG, in the folder of the file or below it; the survey report shows "
             "them"},
};

constexpr std::string_view stages[] = {"cut", "made", "fitted", "settled"};

constexpr PropertyRow piece[] = {
    choice_row("stage", Need::required, stages, "made",
               "how far it is: cut off its stock, made up on the bench, fitted and set, settled under its "
               "load"),
    {.name = "number",
     .type = count,
     .least = 1,
     .most = 100,
     .example = "2",
     .help = "which line of its stack, from aloft; needed when there are several"},
    length_row("body", Need::optional, 0.05, longest, "11_284 mm",
               "how long it came out, bearing to bearing"),
    force_row("pull", "500 N", "the pull under which that was measured"),
    date_row("date", Need::optional, "when it was so"),
    text_row("by", Need::optional, "\"north shed\"", "who did it and measured it"),
    text_row("job", Need::optional, "\"2026-114\"", "the number of the job under which it was made"),
    text_row("stock", Need::optional, "\"spool-9\"", "the spool, coil or offcut that it was cut from"),
    text_row("batch", Need::optional, "\"lot 12\"", "the batch that it came from; that of its stock"),
    note_row("\"second eye 3 mm short\"", "anything a reader should know"),
};

constexpr KindRow kinds[] = {
    {.name = "layer",
     .category = Category::layer,
     .group = "Records",
     .naming = Naming::choice,
     .name_choices = layers,
     .holds_overlays = true,
     .properties = layer,
     .help = "what differs from the design as it was ordered, made or fitted; the later layer wins"},
    {.name = "shop",
     .category = Category::record,
     .group = "Records",
     .properties = shop,
     .help = "a loft's conventions"},
    {.name = "stock",
     .category = Category::record,
     .group = "Records",
     .of = Category::material,
     .properties = stock,
     .help = "a spool, coil or offcut in hand"},
    {.name = "survey",
     .category = Category::record,
     .group = "Records",
     .properties = survey,
     .help = "a day on which she was looked over: by whom, for whom, what was not seen; the last one heads "
             "the report"},
    {.name = "rule",
     .category = Category::rule,
     .group = "Records",
     .properties = rule,
     .help = "an owner's or a loft's own check, reported under its own name"},
    {.name = "waive",
     .category = Category::waiver,
     .group = "Records",
     .naming = Naming::finding,
     .of = Category::stay,
     .of_optional = true,
     .properties = waive,
     .help = "leaves one finding standing for one stay, or for all: reason, by whom, until when"},
    {.name = "accept",
     .category = Category::waiver,
     .group = "Records",
     .naming = Naming::finding,
     .of = Category::stay,
     .properties = waive,
     .help = "takes on one finding that blocks, for one stay: reason, by whom, until when; only a finding "
             "that says so can be accepted, and it stays a warning"},
    {.name = "finding",
     .category = Category::inspection,
     .group = "Records",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = inspection,
     .help = "inspection log: what was found on a stay or a joint of it, when and by whom"},
    {.name = "piece",
     .category = Category::piece,
     .group = "Records",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = piece,
     .help = "what became of a piece: how long it was when it was made, fitted, settled; from which stock"},
};

} // namespace

std::span<const KindRow> record_kinds() {
  return kinds;
}

std::span<const std::string_view> stay_quantities() {
  return quantities;
}

} // namespace sheerpole
