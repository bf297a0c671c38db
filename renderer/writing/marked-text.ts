import type { RuleCheck } from './rule-help.ts';

export interface Piece {
  readonly text: string;
  /** Class names: `r-fn`, `r-name`, `r-fault`. */
  readonly look: string;
}

const lookOf = { function: 'r-fn', name: 'r-name', choice: 'r-choice' } as const;

/** The text cut where a mark or a fault begins or ends, each piece with its looks; joined it is the text again. */
export function markedText(text: string, { marks, faults }: RuleCheck): readonly Piece[] {
  const edges = new Set([0, text.length]);
  for (const { from, to } of [...marks, ...faults]) {
    edges.add(Math.min(from, text.length));
    edges.add(Math.min(to, text.length));
  }
  const cuts = [...edges].toSorted((a, b) => a - b);
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] ?? 0;
    const looks = marks.filter((mark) => covers(mark, from, to)).map((mark) => lookOf[mark.kind]);
    const faulty = faults.some((fault) => covers(fault, from, to)) ? ['r-fault'] : [];
    return { text: text.slice(from, to), look: [...looks, ...faulty].join(' ') };
  });
}

function covers(span: { readonly from: number; readonly to: number }, from: number, to: number): boolean {
  return span.from <= from && span.to >= to;
}
