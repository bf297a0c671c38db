import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findLoops } from '#shared-calc/rule/find-loops.ts';

function loops(reads: Readonly<Record<string, string>>) {
  return findLoops(
    new Map(Object.entries(reads).map(([name, list]) => [name, list.split(' ').filter((each) => each !== '')])),
  );
}

describe('findLoops', () => {
  test.each([
    ['nothing where no line comes back to itself', { a: 'b c', b: 'c', c: '' }, []],
    ['a line that reads itself', { a: '', b: 'a b' }, [['b']]],
    [
      'a cycle from the line that stands first, in order of reading',
      { x: 'a', c: 'a', a: 'b', b: 'c' },
      [['c', 'a', 'b']],
    ],
    [
      'two cycles apart',
      { a: 'b', b: 'a', c: 'd', d: 'c a' },
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'two cycles through one line',
      { a: 'b c', b: 'a', c: 'a' },
      [
        ['a', 'b'],
        ['a', 'c'],
      ],
    ],
    ['no cycle of lines that only wait on one', { a: 'b', b: 'c', c: 'b' }, [['b', 'c']]],
    ['nothing in names that are no lines', { a: 'gone', b: 'gone' }, []],
  ] as const)('finds %s', (_, reads, cycles) => {
    expect(loops(reads)).toEqual(cycles);
  });

  test('a chain of 100,000 lines is no matter, closed or open', () => {
    const chain = new Map(Array.from({ length: 100_000 }, (_, at) => [`l${at}`, [`l${at + 1}`]]));
    expect(findLoops(chain)).toEqual([]);
    expect(findLoops(new Map([...chain, ['l100000', ['l0']]]))[0]?.length).toBe(100_001);
  });

  test('every cycle is a cycle, and every line that can come back to itself is in one', () => {
    const graph = fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 7 }), { maxLength: 3 }), {
      minLength: 8,
      maxLength: 8,
    });
    fc.assert(
      fc.property(graph, (lists) => {
        const reads = new Map(lists.map((list, at) => [`${at}`, list.map(String)]));
        const cycles = findLoops(reads);
        const isRing = (cycle: readonly string[]) =>
          cycle.every((name, at) => reads.get(name)?.includes(cycle[(at + 1) % cycle.length] ?? ''));
        const comesBack = (start: string) => {
          const seen = new Set(reads.get(start));
          for (const name of seen) for (const next of reads.get(name) ?? []) seen.add(next);
          return seen.has(start);
        };
        expect(cycles.filter((cycle) => !isRing(cycle))).toEqual([]);
        expect([...new Set(cycles.flat())].toSorted()).toEqual([...reads.keys()].filter(comesBack).toSorted());
      }),
    );
  });
});
