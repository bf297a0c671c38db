import type { CheckResult } from '#shared-calc/bench/bench-types.ts';

export interface WrittenBox {
  readonly label: string;
  /** The size, as it is called. */
  readonly size: string;
  /** With its unit; empty if the cell has no figure now. */
  readonly figure: string;
}

/** What an edit of the bench moved. */
export interface MovedFacts {
  /** Cells whose own text is another one. */
  readonly written: readonly WrittenBox[];
  /** Number of other figures that are other ones now. */
  readonly moved: number;
  /** Number of sizes in which anything was written or moved. */
  readonly sizes: number;
  /** Of the only size, in coins, if it was known and is. */
  readonly price?: { readonly from: number; readonly to: number };
  /** Checks that held and do not any more, or not surely. */
  readonly opened: readonly Pick<CheckResult, 'level' | 'says'>[];
  /** Number of checks that hold again. */
  readonly closed: number;
}

/** So many sentences of checks are read out; the others are counted. */
const SAID_CHECKS = 2;

/** One line after an edit: "Litter depth T03 60 mm: 14 figures moved, price 1,310.97, up 7.73". `money` shows coins. */
export function sayMoved(facts: MovedFacts, money: (coins: number) => string): string {
  const what = [movedWords(facts), priceWords(facts, money)].filter((words) => words !== '').join(', ');
  const head = writtenWords(facts);
  return [head === '' ? what : `${head}: ${what}`, ...checkWords(facts)].join('; ');
}

function writtenWords({ written, sizes }: MovedFacts): string {
  const [first] = written;
  if (!first) return '';
  if (written.length === 1) return [first.label, first.size, first.figure].filter((words) => words !== '').join(' ');
  const isOneLine = written.every(({ label }) => label === first.label);
  return isOneLine ? `${first.label} in ${sizes} sizes` : `${written.length} boxes`;
}

function movedWords({ moved, sizes, written }: MovedFacts): string {
  if (moved === 0) return written.length === 0 ? '' : 'no other figure moved';
  const count = moved === 1 ? '1 figure moved' : `${moved} figures moved`;
  return sizes > 1 ? `${count} in ${sizes} sizes` : count;
}

function priceWords({ price }: MovedFacts, money: (coins: number) => string): string {
  if (!price) return '';
  const { from, to } = price;
  if (from === to) return `price ${money(to)} as before`;
  return `price ${money(to)}, ${to > from ? 'up' : 'down'} ${money(Math.abs(to - from))}`;
}

function checkWords({ opened, closed }: MovedFacts): readonly string[] {
  const said = opened.slice(0, SAID_CHECKS).map(({ level, says }) => `new ${level}: ${says.replace(/\.$/, '')}`);
  const more = opened.length - said.length;
  return [
    ...said,
    ...(more > 0 ? [`${more} more`] : []),
    ...(closed > 0 ? [closed === 1 ? '1 check holds again' : `${closed} checks hold again`] : []),
  ];
}
