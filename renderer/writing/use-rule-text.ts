import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { nextOffer } from './rule-keys.ts';
import type { FieldAct, Onward } from './rule-keys.ts';
import type { Completion, RuleHelp } from './rule-help.ts';

export interface RuleFieldParts {
  readonly text: string;
  readonly label: string;
  readonly help: RuleHelp;
  /** Accepts the text, or returns a sentence that says why not; then the field stays as it is. */
  readonly settle: (text: string, onward: Onward) => string | undefined;
  readonly cancel: () => void;
  /** `box`: one line over a cell of the bench, from which Enter and Tab move on. */
  readonly form: 'panel' | 'box';
  /** Focuses the field when it appears, with the cursor at the end. */
  readonly focus?: 'end';
  /** The text is a first key just typed: completions are shown at once. */
  readonly begun?: boolean;
  readonly readOnly?: boolean;
}

/** A text being written, with its completions and the reason it was refused. */
export interface RuleText {
  readonly text: string;
  readonly cursor: number;
  readonly offers: readonly Completion[];
  readonly active: number;
  readonly refused: string | undefined;
  readonly put: (text: string, cursor: number) => void;
  readonly moved: (cursor: number) => void;
  /** An offer was pressed. */
  readonly take: (offer: Completion) => void;
  /** The whole text was picked. */
  readonly pick: (text: string) => void;
  readonly run: (act: FieldAct) => void;
  /** The field lost the focus. */
  readonly left: () => void;
}

export function useRuleText(parts: RuleFieldParts, placeCursor: (at: number) => void): RuleText {
  const { text, write, refused, settle, left } = useSettling(parts);
  const [cursor, moved] = useState(parts.text.length);
  const { offers, active, offer, walk } = useOffers(parts);
  const put = (next: string, at: number) => {
    write(next);
    moved(at);
    offer(parts.help.complete(next, at), next);
  };
  const pick = (whole: string, onward: Onward = 'stay') => {
    put(whole, whole.length);
    offer([]);
    settle(onward, whole);
  };
  const take = (taken: Completion, onward: Onward = 'stay') => {
    const { from, to, insert } = taken;
    if (areWhole([taken])) {
      pick(insert, onward);
      return;
    }
    const at = from + insert.length;
    put(text.slice(0, from) + insert + text.slice(to), at);
    offer([]);
    placeCursor(at);
  };
  const cancel = () => {
    put(parts.text, parts.text.length);
    offer([]);
    parts.cancel();
  };
  const run = (act: FieldAct) => {
    const here = offers[active];
    if (act.act === 'walk') walk(act.by);
    else if (act.act === 'close') offer([]);
    else if (act.act === 'settle') settle(act.onward);
    else if (act.act === 'cancel') cancel();
    else if (here) take(here, act.onward);
  };
  const leave = () => {
    offer([]);
    left();
  };
  return { text, cursor, offers, active, refused, put, moved, take, pick, run, left: leave };
}

/** The text, and why it was refused. */
function useSettling(parts: RuleFieldParts) {
  const [text, setText] = useState(parts.text);
  const [refused, setRefused] = useState<string>();
  // An accepted text is not submitted again on blur before it comes back from outside.
  const settled = useRef<string>(undefined);
  useGiven(parts.text, (given) => {
    settled.current = undefined;
    setText(given);
  });
  const settle = (onward: Onward, given = text) => {
    const why = parts.settle(given, onward);
    settled.current = why === undefined ? given : undefined;
    setRefused(why);
  };
  return {
    text,
    refused,
    settle,
    write: (next: string) => {
      settled.current = undefined;
      setText(next);
      setRefused(undefined);
    },
    left: () => {
      if (parts.form === 'panel' && text !== parts.text && text !== settled.current) settle('stay');
    },
  };
}

/** The completions that are shown, and the one that Enter takes. */
function useOffers(parts: RuleFieldParts) {
  const [offers, setOffers] = useState(() => firstOffers(parts));
  const [active, setActive] = useState(() => activeAmong(offers, parts.text));
  return {
    offers,
    active,
    offer: (next: readonly Completion[], text = '') => {
      setOffers(next);
      setActive(activeAmong(next, text));
    },
    walk: (by: 1 | -1) => setActive(nextOffer(active, by, offers.length)),
  };
}

/** A new text from outside replaces the text in the field. */
function useGiven(given: string, setText: (text: string) => void): void {
  const before = useRef(given);
  useLayoutEffect(() => {
    if (before.current === given) return;
    before.current = given;
    setText(given);
  }, [given]);
}

/** A choice shows its options as soon as it opens. */
function firstOffers({ help, text, begun, focus }: RuleFieldParts): readonly Completion[] {
  if (focus === undefined) return [];
  if (begun) return help.complete(text, text.length);
  const words = isWord(text) ? help.complete('', 0).filter((offer) => areWhole([offer])) : [];
  return words.map((offer) => ({ ...offer, to: text.length }));
}

/** No figure and no rule. */
function isWord(text: string): boolean {
  return !/[(){}=<>+*/]/.test(text);
}

/** Whether each offer is a whole answer, and not a part of a rule. */
export function areWhole(offers: readonly Completion[]): boolean {
  return offers.length > 0 && offers.every(({ kind, from }) => kind === 'choice' && from === 0);
}

/** Among whole answers the one that is written, or else the first that fits what is written: Enter takes it. */
function activeAmong(offers: readonly Completion[], text: string): number {
  const written = text.trim().toLowerCase();
  if (written === '' || !areWhole(offers)) return -1;
  const same = offers.findIndex(({ insert, label }) => [insert, label].some((word) => word.toLowerCase() === written));
  return Math.max(0, same);
}
