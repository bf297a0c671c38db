import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { houseWritten, soldJob } from '#tests/shared-calc/jobs/sold-jobs.ts';

const ofHouse = (records: Records) =>
  dueOf(derive(records, DEMO_DAY))
    .filter(({ source }) => source === 'house')
    .map(({ job, what, why }) => [job, what, why]);

describe('a change of the house that a sold job is offered', () => {
  test('is to be taken or left until it is answered', () => {
    const offered = houseWritten(soldJob(), 'litter', '20 mm');
    expect(ofHouse(offered)).toEqual([
      ['J02', 'take or leave HC-0001', 'The house has changed since Q-0001A: Litter depth'],
    ]);
    const answer = { change: 'HC-0001', job: 'J02', answer: 'leave', who: 'R-builder' } as const;
    expect(ofHouse(done(offered, 'answerHouse', answer).records)).toEqual([]);
  });
});
