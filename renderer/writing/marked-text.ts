import type { RuleCheck } from './rule-help.ts';

export interface Piece {
  readonly text: string;
  readonly looks: readonly Look[];
}

/** A choice is written as it is. */
type Look = 'function' | 'name' | 'fault';

/** The text split where a mark or a fault begins or ends, each piece with its looks. The joined pieces are the text. */
export function markedText(text: string, { marks, faults: found }: RuleCheck): readonly Piece[] {
  const faults = found.map((fault) => seenSpan(text, fault));
  const edges = new Set([0, text.length]);
  for (const { from, to } of [...marks, ...faults]) {
    edges.add(Math.min(from, text.length));
    edges.add(Math.min(to, text.length));
  }
  const cuts = [...edges].toSorted((a, b) => a - b);
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] ?? 0;
    const looks = marks.flatMap((mark): Look[] =>
      mark.kind !== 'choice' && covers(mark, from, to) ? [mark.kind] : [],
    );
    if (faults.some((fault) => covers(fault, from, to))) looks.push('fault');
    return { text: text.slice(from, to), looks };
  });
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Something missing has no width: the letter before its position is marked, or the first letter. */
function seenSpan(text: string, { from, to }: Span): Span {
  if (to > from && from < text.length) return { from, to };
  const end = text.slice(0, from).trimEnd().length;
  return end === 0 ? { from: 0, to: 1 } : { from: end - 1, to: end };
}

function covers(span: Span, from: number, to: number): boolean {
  return span.from <= from && span.to >= to;
}
