import { describe, expect, test } from 'vitest';
import { cautionEntry } from '#shared-calc/cautions/all-cautions.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { answersToMind, surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';

const settled = { ...unasked, residualCurrentDevice: 'yes', socketNear: 'yes', heaterNear: 'no' } as const;

describe('surveyCautions', () => {
  test('a place with a protected socket within reach and no heater has none', () => {
    expect(surveyCautions(settled)).toEqual([]);
  });

  test('a residual-current device that nobody asked about is not taken for one that is there', () => {
    expect(surveyCautions(unasked).map(({ says, decides }) => [says, decides])).toEqual([
      ['Nobody has asked for a residual-current device: ask before anything is plugged in.', 'Qualified electrician'],
    ]);
  });

  test.each([
    [{ residualCurrentDevice: 'no' }, 'noResidualCurrent', 'Qualified electrician'],
    [{ socketNear: 'no' }, 'noSocketNear', 'Qualified electrician'],
    [{ heaterNear: 'yes' }, 'heaterNear', "Client's named person, vet"],
  ] as const)('%o is cautioned of, with who decides', (answer, id, decides) => {
    expect(surveyCautions({ ...settled, ...answer }).map((each) => [each.id, each.decides])).toEqual([[id, decides]]);
  });

  test('beside a question stands what its own answer says', () => {
    const all = { ...settled, residualCurrentDevice: 'no', heaterNear: 'yes' } as const;
    expect(surveyCautions(all, 'heaterNear').map(({ id }) => id)).toEqual(['heaterNear']);
    expect(surveyCautions(all, 'lift')).toEqual([]);
  });

  test('a client reads each of them: it is their place', () => {
    expect(answersToMind.filter(([, , id]) => !cautionEntry(id).onQuote)).toEqual([]);
  });
});
