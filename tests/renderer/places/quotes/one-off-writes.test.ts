import { describe, expect, test } from 'vitest';
import { addOneOff, oneOffsOf, removeOneOff, writeOneOff } from '#renderer/places/quotes/one-off-writes.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import { workedJob } from '#tests/worked-job.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const stand = { job: 'J02', label: 'Oak stand', group: 'hardscape', costCoins: 6000, by: 'client' } as const;

describe('addOneOff', () => {
  test("a stand at 60.00 stands on the quote at its group's margin of 40 %", () => {
    const records = libraryJob();
    const then = applyChange(records, addOneOff(records, stand));
    const body = valueOf(draftQuote(derive(then, DEMO_DAY), workedJob(then, { id: 'J02' }, DEMO_DAY)));
    expect(body.sums.lines.at(-1)).toEqual({
      group: 'hardscape',
      label: 'Oak stand',
      costCoins: 6000,
      reserveCoins: 0,
      margin: 0.4,
      priceCoins: 10_000,
      taxClass: 'standard',
    });
  });

  test('two lines of the same name are two lines', () => {
    const records = libraryJob();
    const one = applyChange(records, addOneOff(records, stand));
    const two = applyChange(one, addOneOff(one, stand));
    expect(oneOffsOf(two, 'J02').map(({ id }) => id)).toEqual(['J02-line-1', 'J02-line-2']);
  });
});

describe('writeOneOff', () => {
  test('its cost is put right, its words are not emptied', () => {
    const records = libraryJob();
    const with1 = applyChange(records, addOneOff(records, stand));
    const [line] = oneOffsOf(with1, 'J02');
    if (!line) throw new Error('no line');
    expect(oneOffsOf(after(with1, writeOneOff(line, { costCoins: 5000 })), 'J02')[0]?.costCoins).toBe(5000);
    expect(faultOf(writeOneOff(line, { label: ' ' }))).toBe('A line needs its words.');
  });
});

describe('removeOneOff', () => {
  test('undone, it stands there again', () => {
    const records = libraryJob();
    const with1 = applyChange(records, addOneOff(records, stand));
    const [line] = oneOffsOf(with1, 'J02');
    if (!line) throw new Error('no line');
    const change = removeOneOff(line);
    expect(applyChange(applyChange(with1, change), invertChange(change))).toEqual(with1);
  });
});
