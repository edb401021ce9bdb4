// The text of one file in CodeMirror: colours, findings under the words, completion and help, all from the compiler.

import { autocompletion, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { Annotation, EditorState, RangeSet, StateEffect, StateField } from "@codemirror/state";
import {
  Decoration,
  drawSelection,
  EditorView,
  GutterMarker,
  gutterLineClass,
  highlightActiveLine,
  hoverTooltip,
  keymap,
  lineNumbers,
  WidgetType,
} from "@codemirror/view";
import { difference } from "../core/edits.js";

const shown = StateEffect.define();
/** Marks a change that did not come from the keyboard. */
const from_outside = Annotation.define();

class HasFinding extends GutterMarker {
  elementClass = "has";
}
const has_finding = new HasFinding();

/** What is said of a finding, below its line. */
class Card extends WidgetType {
  constructor(finding, build) {
    super();
    this.finding = finding;
    this.build = build;
  }
  eq(other) {
    return other.finding === this.finding;
  }
  toDOM() {
    return this.build(this.finding);
  }
  ignoreEvent() {
    return true;
  }
}

/** Decorations of tokens, findings and the card of one that is open. */
const decorations = StateField.define({
  create: () => ({ marks: Decoration.none, lines: RangeSet.empty }),
  update(value, transaction) {
    for (const effect of transaction.effects) if (effect.is(shown)) return effect.value;
    if (!transaction.docChanged) return value;
    return { marks: value.marks.map(transaction.changes), lines: value.lines.map(transaction.changes) };
  },
  provide: (field) => [
    EditorView.decorations.from(field, (value) => value.marks),
    gutterLineClass.from(field, (value) => value.lines),
  ],
});

function made_of(state, { tokens, findings, open, card }) {
  const { length } = state.doc;
  const marks = [];
  const lines = new Set();
  for (const token of tokens)
    if (token.units > 0 && token.unit + token.units <= length)
      marks.push(Decoration.mark({ class: `t-${token.sort}` }).range(token.unit, token.unit + token.units));
  for (const finding of findings) {
    const { begin, end } = finding.place;
    const from = Math.min(begin.unit, length);
    let to = Math.min(Math.max(end.unit, from), length);
    const line = state.doc.lineAt(from);
    lines.add(line.from);
    if (to > line.to && finding !== open) to = line.to;
    if (to === from) to = Math.min(from + 1, line.to);
    if (to > from) marks.push(Decoration.mark({ class: `finding sev-${finding.severity}`, inclusive: false }).range(from, to));
    if (finding === open) marks.push(Decoration.widget({ widget: new Card(finding, card), block: true, side: 1 }).range(line.to));
  }
  return {
    marks: Decoration.set(marks, true),
    lines: RangeSet.of([...lines].sort((a, b) => a - b).map((from) => has_finding.range(from))),
  };
}

/**
 * @param {object} how
 * @param {(text: string) => void} how.typed
 * @param {(unit: number) => Promise<any>} how.complete
 * @param {(unit: number) => Promise<any>} how.hover
 * @param {(unit: number) => void} how.tapped
 * @param {string} how.label
 */
export function make_editor({ typed, complete, hover, tapped, label }) {
  const completion = async (context) => {
    const before = context.matchBefore(/[\w."-]+/);
    if (!before && !context.explicit) return null;
    const answer = await complete(context.pos);
    if (!answer || answer.proposals.length === 0) return null;
    return {
      from: Math.min(answer.place.begin.unit, context.pos),
      to: context.pos,
      options: answer.proposals.map((each) => ({
        label: each.insert || each.word,
        displayLabel: each.word,
        detail: each.detail,
        info: each.help,
        boost: each.wanted ? 5 : 0,
      })),
      validFor: /^[\w.-]*$/,
    };
  };
  const help = hoverTooltip(async (_view, pos) => {
    const answer = await hover(pos);
    if (!answer) return null;
    return {
      pos: answer.place.begin.unit,
      end: answer.place.end.unit,
      create: () => {
        const dom = document.createElement("div");
        dom.className = "help";
        for (const line of [answer.code, ...answer.lines].filter(Boolean))
          dom.append(Object.assign(document.createElement("p"), { textContent: line }));
        return { dom };
      },
    };
  });
  const state = (text) =>
    EditorState.create({
      doc: text,
      extensions: [
        lineNumbers(),
        history(),
        drawSelection(),
        highlightActiveLine(),
        EditorView.lineWrapping,
        EditorState.tabSize.of(2),
        autocompletion({ override: [completion], activateOnTyping: true, icons: false }),
        help,
        // Tab goes on to what comes behind the text, as everywhere on the page.
        keymap.of([...completionKeymap, ...defaultKeymap, ...historyKeymap]),
        decorations,
        EditorView.contentAttributes.of({ "aria-label": label, spellcheck: "false", autocapitalize: "off", autocorrect: "off" }),
        EditorView.updateListener.of((update) => {
          if (update.docChanged && !update.transactions.some((each) => each.annotation(from_outside)))
            typed(update.state.doc.toString());
        }),
        EditorView.domEventHandlers({
          click: (event, view) => {
            const word = event.target.closest?.(".finding");
            if (word) tapped(view.posAtDOM(word));
          },
        }),
      ],
    });
  const view = new EditorView({ state: state("") });
  let file = "";
  return {
    dom: view.dom,
    /** Shows a file; where its text changed elsewhere, only what differs is replaced. */
    show(name, text) {
      if (name !== file) {
        file = name;
        view.setState(state(text));
      } else {
        const edit = difference(view.state.doc.toString(), text);
        if (edit)
          view.dispatch({ changes: { from: edit.begin, to: edit.end, insert: edit.text }, annotations: from_outside.of(true) });
      }
    },
    decorate: (what) => view.dispatch({ effects: shown.of(made_of(view.state, what)) }),
    text: () => view.state.doc.toString(),
    /** Puts a sign where the cursor is. */
    insert(sign) {
      view.dispatch(view.state.replaceSelection(sign), { scrollIntoView: true });
      view.focus();
    },
    go_to_line(number) {
      const line = view.state.doc.line(Math.min(Math.max(number, 1), view.state.doc.lines));
      view.dispatch({ selection: { anchor: line.from }, effects: EditorView.scrollIntoView(line.from, { y: "center" }) });
    },
  };
}
