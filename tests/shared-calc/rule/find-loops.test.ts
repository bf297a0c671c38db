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
      'a ring from the line that stands first, in order of reading',
      { x: 'a', c: 'a', a: 'b', b: 'c' },
      [['c', 'a', 'b']],
    ],
    [
      'two rings apart',
      { a: 'b', b: 'a', c: 'd', d: 'c a' },
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'two rings through one line',
      { a: 'b c', b: 'a', c: 'a' },
      [
        ['a', 'b'],
        ['a', 'c'],
      ],
    ],
    ['no ring of lines that only wait on one', { a: 'b', b: 'c', c: 'b' }, [['b', 'c']]],
    ['nothing in names that are no lines', { a: 'gone', b: 'gone' }, []],
  ] as const)('finds %s', (_, reads, rings) => {
    expect(loops(reads)).toEqual(rings);
  });

  test('a chain of 100,000 lines is no matter, closed or open', () => {
    const chain = new Map(Array.from({ length: 100_000 }, (_, at) => [`l${at}`, [`l${at + 1}`]]));
    expect(findLoops(chain)).toEqual([]);
    expect(findLoops(new Map([...chain, ['l100000', ['l0']]]))[0]?.length).toBe(100_001);
  });

  test('every ring is a ring, and every line that can come back to itself is in one', () => {
    const graph = fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 7 }), { maxLength: 3 }), {
      minLength: 8,
      maxLength: 8,
    });
    fc.assert(
      fc.property(graph, (lists) => {
        const reads = new Map(lists.map((list, at) => [`${at}`, list.map(String)]));
        const rings = findLoops(reads);
        const isRing = (ring: readonly string[]) =>
          ring.every((name, at) => reads.get(name)?.includes(ring[(at + 1) % ring.length] ?? ''));
        const comesBack = (start: string) => {
          const seen = new Set(reads.get(start));
          for (const name of seen) for (const next of reads.get(name) ?? []) seen.add(next);
          return seen.has(start);
        };
        expect(rings.filter((ring) => !isRing(ring))).toEqual([]);
        expect([...new Set(rings.flat())].toSorted()).toEqual([...reads.keys()].filter(comesBack).toSorted());
      }),
    );
  });
});
