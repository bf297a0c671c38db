import { describe, expect, test } from 'vitest';

import { writeCells } from '#shared-calc/acts/cell-acts.ts';
import { forkRecipe } from '#shared-calc/acts/family-acts.ts';
import { answerHouse } from '#shared-calc/acts/house-acts.ts';
import { newJob } from '#shared-calc/acts/job-acts.ts';
import { moveJob } from '#shared-calc/acts/move-acts.ts';
import { writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { keepForTank, writeLineFor } from '#shared-calc/acts/tank-line-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { houseOffers, touchedBy } from '#shared-calc/derive/house-offers.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { doneAndBack as done, refusedOrDone as refused } from '#tests/shared-calc/acts/do-act.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const jobWith = (recipe: string, from: Records) =>
  done(newJob, { title: 'Shop window', recipe, sizes: [{ tank: 'T03' }, { tank: 'T07' }] }, from);
const lastJob = (from: Records) => [...from.job.keys()].at(-1) ?? '';

/** Litter of both tanks of a job: value in mm and where it is from. */
function litter(from: Records, job = lastJob(from)) {
  const bench = derive(from, DEMO_DAY).job(job)?.bench;
  return ['T03', 'T07'].map((tank) => {
    const box = bench?.box(tank, 'litter');
    return [typeof box?.value === 'number' ? Math.round(box.value * 1000) : undefined, box?.state];
  });
}

describe('a line that is always otherwise for a tank', () => {
  const first = jobWith('H1', records);
  const job = lastJob(first);
  const over = done(writeCells, { job, cells: [{ column: 'T03', line: 'litter', text: '20 mm' }] }, first);
  const usual = litter(first)[1]?.[0];

  test('kept from the bench it holds for that tank, in this job and in every other', () => {
    const kept = done(keepForTank, { job, column: 'T03', line: 'litter' }, over);
    const always = [
      [20, 'always for this tank'],
      [usual, 'house'],
    ];
    expect([kept.localValue.size, litter(kept, job)]).toEqual([over.localValue.size - 1, always]);
    expect(litter(jobWith('H1', kept))).toEqual(always);
    const child = done(forkRecipe, { recipe: 'H1', id: 'H5' }, kept);
    expect(litter(jobWith('H5', child))).toEqual(always);
    expect(refused(keepForTank, { job, column: 'T07', line: 'litter' }, kept)).toBe(
      'Write a value in this box first; then it can always hold for this tank.',
    );
  });

  test('a change of the house for the other tanks leaves it, and it goes back to the house', () => {
    const kept = done(keepForTank, { job, column: 'T03', line: 'litter' }, over);
    const moved = done(writeLine, { line: 'H1.litter', text: '40 mm' }, kept);
    expect(litter(moved, job).map(([mm]) => mm)).toEqual([20, 40]);
    const back = done(writeLineFor, { line: 'H1.litter', tanks: ['T03'], text: null }, moved);
    expect([back.difference.size, litter(back, job).map(([mm]) => mm)]).toEqual([0, [40, 40]]);
    expect(refused(writeLineFor, { line: 'H1.litter', tanks: ['T99'], text: '1 mm' }, kept)).toBe(
      'There is no tank called T99.',
    );
    expect(refused(writeLineFor, { line: 'H1.litter', tanks: ['T03'], text: 'nothing' }, kept)).toMatch(
      /^litter=nothing/,
    );
  });

  test('a sold job stays as it was sold, is offered it, and takes it for its tank alone', () => {
    const sold = done(moveJob, { job, state: 'accepted' }, first);
    const written = done(writeLineFor, { line: 'H1.litter', tanks: ['T03'], text: '20 mm' }, sold);
    expect(litter(written, job).map(([mm]) => mm)).toEqual([usual, usual]);
    const [offer] = houseOffers(derive(written, DEMO_DAY), job);
    expect(offer?.change.for).toEqual(['T03']);
    const taken = done(answerHouse, { change: offer?.change.id, job, answer: 'take' }, written);
    expect(litter(taken, job).map(([mm]) => mm)).toEqual([20, usual]);
    expect(touchedBy(derive(sold, DEMO_DAY), written).map((each) => [each.job.id, each.will])).toContainEqual([
      job,
      'be offered',
    ]);
  });

  test('sold with it, a job that takes a change for all keeps its tank as it was sold', () => {
    const kept = done(keepForTank, { job, column: 'T03', line: 'litter' }, over);
    const sold = done(moveJob, { job, state: 'accepted' }, kept);
    const moved = done(writeLine, { line: 'H1.litter', text: '40 mm' }, sold);
    const [offer] = houseOffers(derive(moved, DEMO_DAY), job);
    const taken = done(answerHouse, { change: offer?.change.id, job, answer: 'take' }, moved);
    expect(litter(taken, job).map(([mm]) => mm)).toEqual([20, 40]);
  });
});
