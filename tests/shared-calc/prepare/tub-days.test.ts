import { describe, expect, test } from 'vitest';
import { standingTub, tubsInTime } from '#shared-calc/prepare/tub-days.ts';
import type { CultureKind, Tub } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const { cultureKind } = demoRecords();

function kindOf(id: string): CultureKind {
  const kind = cultureKind.get(id);
  if (!kind) throw new Error(id);
  return kind;
}

function tub(startedOn: string, claimedBy?: string): Tub {
  return {
    id: 'T-01',
    kind: 'C1',
    startedOn,
    spare: false,
    place: '',
    note: '',
    ...(claimedBy !== undefined && { claimedBy }),
  };
}

function standing(startedOn: string, today: string, kind = 'C1') {
  const { is, readyOn, nextOn } = standingTub(tub(startedOn), kindOf(kind), today);
  return [is, readyOn, nextOn];
}

describe('standingTub', () => {
  test.each([
    ['grows for its first 28 days', '2027-02-08', '2027-03-07', 'growing', '2027-03-08', '2027-03-08'],
    ['is ready on the 28th', '2027-02-08', '2027-03-08', 'ready', '2027-03-08', '2027-03-08'],
    ['gives again 14 days on', '2027-02-08', '2027-03-09', 'ready', '2027-03-08', '2027-03-22'],
    ['and again', '2027-02-08', '2027-04-05', 'ready', '2027-03-08', '2027-04-05'],
  ])('a springtail tub %s', (_, startedOn, today, ...stands) => {
    expect(standing(startedOn, today)).toEqual(stands);
  });

  test('a fly tub gives for 21 days and is used up', () => {
    expect([standing('2027-03-01', '2027-03-20', 'C5'), standing('2027-03-01', '2027-04-06', 'C5')]).toEqual([
      ['ready', '2027-03-15', '2027-03-20'],
      ['used up', '2027-03-15', undefined],
    ]);
  });
});

describe('tubsInTime', () => {
  test('a tub that another job claims is not counted on', () => {
    const all = [tub('2027-02-01'), tub('2027-02-01', 'J02'), tub('2027-02-01', 'J03'), tub('2027-03-01')].map((each) =>
      standingTub(each, kindOf('C1'), '2027-03-08'),
    );
    expect(tubsInTime(all, '2027-03-08', ['J02']).map((each) => each.tub.claimedBy)).toEqual([undefined, 'J02']);
  });
});
