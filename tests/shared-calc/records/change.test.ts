import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyChange, invertChange, isEmptyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { ChangeSchema } from '#shared-calc/records/change-schema.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { mapKinds, type Records, type Rate } from '#shared-calc/records/records.ts';

const none = mapKinds<Records>(() => new Map());

const anyRate = fc.record({
  id: fc.constantFrom('A', 'B', 'C', 'D'),
  label: fc.constantFrom('', 'Builder', 'Fitter'),
  coins: fc.nat(3),
  per: fc.constantFrom('h' as const, 'km' as const),
});
const anyBook = fc.uniqueArray(anyRate, { selector: ({ id }) => id }).map((rates) => bookOf(rates));

function bookOf(rates: readonly Rate[]): Records {
  return { ...none, rate: new Map(rates.map((rate) => [rate.id, rate])) };
}

describe('diffRecords', () => {
  test('it leads from any book to any other', () => {
    fc.assert(
      fc.property(anyBook, anyBook, (from, to) => {
        expect(applyChange(from, diffRecords('', from, to)).rate).toEqual(to.rate);
      }),
    );
  });

  test('from a book to itself nothing changes', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        expect(isEmptyChange(diffRecords('', book, structuredClone(book)))).toBe(true);
      }),
    );
  });
});

describe('invertChange', () => {
  test('a change taken back leaves the book as it was', () => {
    fc.assert(
      fc.property(anyBook, anyBook, (from, to) => {
        const change = diffRecords('', from, to);

        expect(applyChange(applyChange(from, change), invertChange(change)).rate).toEqual(from.rate);
        expect(invertChange(invertChange(change))).toEqual(change);
      }),
    );
  });
});

describe('squashChanges', () => {
  test('several changes as one do the same', () => {
    fc.assert(
      fc.property(anyBook, fc.array(anyBook, { minLength: 1, maxLength: 5 }), (start, steps) => {
        const states = [start, ...steps];
        const changes = steps.map((to, index) => diffRecords('', states[index] ?? start, to));
        const end = steps.at(-1) ?? start;
        const squashed = squashChanges('all', changes);

        expect(applyChange(start, squashed).rate).toEqual(end.rate);
        expect(countTouched(squashed)).toBe(countTouched(diffRecords('', start, end)));
      }),
    );
  });
});

describe('ChangeSchema', () => {
  test('a change comes back from its JSON as it was', () => {
    fc.assert(
      fc.property(anyBook, anyBook, (from, to) => {
        const change = diffRecords('x', from, to);

        expect(ChangeSchema.parse(JSON.parse(JSON.stringify(change)))).toEqual(change);
      }),
    );
  });

  test.each([
    { says: 'an unknown kind', added: [{ kind: 'secret', record: { id: 'A' } }] },
    { says: 'a record of another kind', added: [{ kind: 'tank', record: { id: 'A', label: '', coins: 1, per: 'h' } }] },
    {
      says: 'a field too many',
      added: [{ kind: 'rate', record: { id: 'A', label: '', coins: 1, per: 'h', more: 1 } }],
    },
  ])('$says is refused', ({ added }) => {
    expect(ChangeSchema.safeParse({ label: '', added, updated: [], removed: [] }).success).toBe(false);
  });
});

function countTouched({ added, updated, removed }: Change): number {
  return added.length + updated.length + removed.length;
}
