import { parseSync, Visitor, type ESTree } from 'vite';

/** A small code fault: the text from `start` to `end` of the file is replaced by `instead`. */
export interface Fault {
  readonly kind: FaultKind;
  readonly start: number;
  readonly end: number;
  readonly instead: string;
}

export const faultKinds = [
  'dropped element',
  'flipped comparison',
  'wrong constant',
  'swapped branches',
  'empty table',
  'omitted flag',
] as const;
export type FaultKind = (typeof faultKinds)[number];

interface Span {
  readonly start: number;
  readonly end: number;
}

const opposites: Readonly<Record<string, string>> = {
  '<': '>=',
  '<=': '>',
  '>': '<=',
  '>=': '<',
  '===': '!==',
  '!==': '===',
};

/** Every fault that can be made in a source, except in types and comments. */
export function findFaults(file: string, text: string): Fault[] {
  const faults: Fault[] = [];
  const types = new Set<number>();
  const put = (kind: FaultKind, { start, end }: Span, instead: string): void => {
    faults.push({ kind, start, end, instead });
  };
  const cut = ({ start, end }: Span): string => text.slice(start, end);
  const swap = (one: Span, other: Span): void => {
    const between = text.slice(one.end, other.start);
    put('swapped branches', { start: one.start, end: other.end }, cut(other) + between + cut(one));
  };
  new Visitor({
    ArrayExpression: (node) => {
      const elements = node.elements.filter((each) => each !== null);
      if (elements.length < 2) return;
      for (const index of elements.keys()) put('dropped element', withComma(elements, index), '');
      put('empty table', node, '[]');
    },
    BinaryExpression: ({ left, operator, right }) => {
      const opposite = opposites[operator];
      if (opposite === undefined) return;
      put('flipped comparison', { start: left.end, end: right.start }, ` ${opposite} `);
    },
    ConditionalExpression: (node) => swap(node.consequent, node.alternate),
    IfStatement: ({ test, alternate, consequent }) => {
      if (alternate === null) put('swapped branches', test, `!(${cut(test)})`);
      else if (alternate.type === 'BlockStatement') swap(consequent, alternate);
    },
    JSXAttribute: (node) => {
      if (node.value === null) put('omitted flag', node, '');
    },
    Literal: (node) => {
      if (typeof node.value === 'number' && !types.has(node.start))
        put('wrong constant', node, otherNumber(node.value));
    },
    ObjectExpression: ({ properties }) => {
      for (const [index, property] of properties.entries())
        if (isFlag(property)) put('omitted flag', withComma(properties, index), '');
    },
    TSLiteralType: ({ literal }) => {
      types.add(literal.start);
    },
  }).visit(parseSync(file, text).program);
  return faults;
}

/** An entry of a list, with the comma that is removed with it. */
function withComma(entries: readonly Span[], index: number): Span {
  const { start, end } = entries[index] ?? { start: 0, end: 0 };
  const next = entries[index + 1];
  if (next !== undefined) return { start, end: next.start };
  return { start: entries[index - 1]?.end ?? start, end };
}

function isFlag(property: ESTree.ObjectPropertyKind): boolean {
  return property.type === 'Property' && property.value.type === 'Literal' && property.value.value === true;
}

/** Next to a small whole number, half as much again for another: a fault of the size that slips through. */
function otherNumber(value: number): string {
  return String(Number.isInteger(value) && value <= 10 ? value + 1 : value * 1.5);
}
