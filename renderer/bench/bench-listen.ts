import type { BenchHand } from './bench-hand.ts';
import { runKey } from './bench-keys.ts';
import { clearRange, copyRange, pasteOver } from './bench-writing.ts';
import { clipboardEvents, inField } from './clipboard-events.ts';
import { keyAct } from './grid-keys.ts';
import { cellMark, mouseRange } from './mouse-range.ts';
import { single } from './range.ts';

/** Leads keys, mouse and clipboard to the bench; answers how to stop. */
export function listenOnBench(host: HTMLElement, hand: BenchHand): () => void {
  const onKey = (event: KeyboardEvent) => pressKey(event, hand);
  host.addEventListener('keydown', onKey, { capture: true });
  const onFocus = (event: FocusEvent) => enterByRow(event, hand);
  host.addEventListener('focusin', onFocus);
  const pointed = pointOnBench(host, hand);
  const clipped = clipOnBench(host, hand);
  hand.table.scrolled(() => {
    hand.editor.follow();
    hand.remark();
  });
  return () => {
    host.removeEventListener('keydown', onKey, { capture: true });
    host.removeEventListener('focusin', onFocus);
    pointed();
    clipped();
  };
}

/** Tab into the grid meets a whole row first: the chosen box takes the keyboard instead. */
function enterByRow({ target }: FocusEvent, { range, take, desk }: BenchHand): void {
  if (!(target instanceof Element) || !target.classList.contains('ag-row')) return;
  const { columns } = desk().positions.extent;
  take(single(range()?.tip ?? { row: 0, column: Math.min(1, columns - 1) }));
}

/** A box that just got the keyboard is chosen by its first key: the grid tells of it only later. */
function pressKey(event: KeyboardEvent, hand: BenchHand): void {
  const mark = inField(event.target) ? undefined : cellMark(event.target);
  if (!mark) return;
  if (!hand.range()) hand.take(single(hand.table.spotOf(mark, hand.desk())), false);
  const range = hand.range();
  if (!range) return;
  const act = keyAct(event);
  const write = (typed?: string) => hand.write(range.tip, typed);
  if (!act || !runKey(act, { desk: hand.desk(), range, take: hand.take, write })) return;
  event.preventDefault();
  event.stopPropagation();
}

function pointOnBench(host: HTMLElement, { range, take, write, table, desk }: BenchHand): () => void {
  return mouseRange(host, {
    press: (spot, extend) => {
      const begun = extend ? range() : undefined;
      take(begun ? { anchor: begun.anchor, tip: spot } : single(spot), begun !== undefined);
    },
    draw: (spot) => take({ anchor: range()?.anchor ?? spot, tip: spot }),
    open: (spot) => write(spot),
    spotOf: (mark) => table.spotOf(mark, desk()),
  });
}

function clipOnBench(host: HTMLElement, { range, desk }: BenchHand): () => void {
  return clipboardEvents(host, {
    copied: () => {
      const chosen = range();
      return chosen && copyRange(desk(), chosen);
    },
    clear: () => {
      const chosen = range();
      if (chosen) clearRange(desk(), chosen);
    },
    paste: (text) => {
      const chosen = range();
      if (chosen) pasteOver(desk(), chosen, text);
    },
  });
}
