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
  readonly accept: (offer: Completion) => void;
  readonly run: (act: FieldAct) => void;
  /** The field lost the focus. */
  readonly left: () => void;
}

export function useRuleText(parts: RuleFieldParts, placeCursor: (at: number) => void): RuleText {
  const [text, setText] = useState(parts.text);
  const [cursor, setCursor] = useState(parts.text.length);
  const [offers, setOffers] = useState(() => firstOffers(parts));
  const [active, setActive] = useState(-1);
  const [refused, setRefused] = useState<string>();
  // An accepted text is not submitted again on blur before it comes back from outside.
  const taken = useRef<string>(undefined);
  useGiven(parts.text, (given) => {
    taken.current = undefined;
    setText(given);
  });

  const put = (next: string, at: number) => {
    taken.current = undefined;
    setText(next);
    setCursor(at);
    setActive(-1);
    setRefused(undefined);
    setOffers(parts.help.complete(next, at));
  };
  const accept = (offer: Completion) => {
    const at = offer.from + offer.insert.length;
    put(text.slice(0, offer.from) + offer.insert + text.slice(offer.to), at);
    setOffers([]);
    placeCursor(at);
  };
  const settle = (onward: Onward) => {
    const why = parts.settle(text, onward);
    taken.current = why === undefined ? text : undefined;
    setRefused(why);
  };
  const cancel = () => {
    put(parts.text, parts.text.length);
    setOffers([]);
    parts.cancel();
  };
  const run = (act: FieldAct) => {
    const offer = offers[active];
    if (act.act === 'walk') setActive(nextOffer(active, act.by, offers.length));
    else if (act.act === 'close') setOffers([]);
    else if (act.act === 'settle') settle(act.onward);
    else if (act.act === 'cancel') cancel();
    else if (offer) accept(offer);
  };
  const left = () => {
    setOffers([]);
    if (parts.form === 'panel' && text !== parts.text && text !== taken.current) settle('stay');
  };
  return { text, cursor, offers, active, refused, put, moved: setCursor, accept, run, left };
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

/** A choice shows its other options as soon as it opens. */
function firstOffers({ help, text, begun, focus }: RuleFieldParts): readonly Completion[] {
  if (focus === undefined) return [];
  if (begun) return help.complete(text, text.length);
  const isWord = /^[\p{L}\d_ -]*$/u.test(text);
  const words = isWord ? help.complete('', 0).filter((offer) => offer.kind === 'choice') : [];
  return words.filter((offer) => offer.insert !== text).map((offer) => ({ ...offer, to: text.length }));
}
