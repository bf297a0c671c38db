import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { today } from '#electron/service/today.ts';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { QuoteLine, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';
import { issued, libraryJob, valueOf, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * T05 with H1, Full kit, soil laid flat, as it costs in the quote without house figures: tank 148.00, media 46.89,
 * hardscape 92.40, cover 21.60, lamps 88.00, mist 60.50, plants 71.50, microfauna 14.00, work 440.75. Two lines for
 * this job alone: an oak stand at 80.00 (hardscape, the client's wish) and an electrician at 120.00 (work, ours).
 * House figures: 5 % for what comes up, 10 % of the plants for those that fail, 2 % warranty, 3 % discount, the price
 * before tax up to the next 5.00. So each line is (cost + reserves) / (1 - margin) / 0.98 * 0.97:
 *
 *   tank        (148.00 + 7.40) / 0.70 / 0.98 * 0.97 = 219.73
 *   media       (46.89 + 2.34) / 0.60 ...            =  81.21
 *   hardscape   (92.40 + 4.62) / 0.60                = 160.05
 *   cover       (21.60 + 1.08) / 0.65                =  34.54
 *   lamps       (88.00 + 4.40) / 0.70                = 130.65
 *   mist        (60.50 + 3.03) / 0.70                =  89.83
 *   plants      (71.50 + 7.15 + 3.58) / 0.55         = 147.98
 *   microfauna  (14.00 + 0.70) / 0.40                =  36.38   (36.375)
 *   work        (440.75 + 22.04) / 0.75              = 610.76
 *   stand       (80.00 + 4.00) / 0.60                = 138.57
 *   electrician (120.00 + 6.00) / 0.75               = 166.29
 *
 * Sum 1,815.99, up to 1,820.00: 4.01 on the largest line, work 614.77. Tax 12 % of 1,635.64 = 196.28 and 4 % of
 * 184.36 = 7.37; price 2,023.65; deposit 0.40 * 2,023.65 = 809.46, up to 810.00; at the handover 1,213.65.
 */
const quoteA = {
  Tank: '219.73',
  'Drainage, soil and leaves': '81.21',
  'Wood, cork and background': '160.05',
  'Cover glass': '34.54',
  Light: '130.65',
  Misting: '89.83',
  Plants: '147.98',
  Microfauna: '36.38',
  Work: '614.77',
  'Oak stand': '138.57',
  Electrician: '166.29',
};

/*
 * Revision B. The client wants no stand and leaves of 20 mm: media (45.03 + 2.25) / 0.6 / 0.98 * 0.97 = 78.00; the
 * sum 1,674.21 goes up to 1,675.00, 0.79 on work: 611.55. So the client's part is -145.00.
 * We give 5 % discount: 215.20, 76.39, 156.75, 33.82, 127.96, 87.98, 144.93, 35.63, 598.16, 162.86, together
 * 1,639.68, up to 1,640.00, work 598.48: -35.00.
 * The tank costs 155.00: (155.00 + 7.75) / 0.7 / 0.98 * 0.95 = 225.38; 1,649.86 up to 1,650.00, work 598.30: +10.00.
 * Tax 12 % of 1,469.44 = 176.33 and 4 % of 180.56 = 7.22: price 1,833.55, deposit 733.42 up to 735.00.
 */
const net = { client: '-145.00', supplier: '10.00', us: '-35.00' };

describe('a quote with every house figure, and its revision', () => {
  const first = issued(withHouseFigures(libraryJob()), 'A');
  const second = issued(revised(first.records), 'B');

  test('quote A: each line, the step, tax by class, deposit and balance', () => {
    const { lines, net: before, tax, gross, deposit, atHandover } = quoteModel(first.body);
    expect(Object.fromEntries(lines.map(({ label, price }) => [label, price]))).toEqual(quoteA);
    expect({ before, gross, deposit, atHandover }).toEqual({
      before: '1820.00',
      gross: '2023.65',
      deposit: '810.00',
      atHandover: '1213.65',
    });
    expect(tax.map(({ of, sum }) => [of, sum])).toEqual([
      ['1635.64', '196.28'],
      ['184.36', '7.37'],
    ]);
  });

  test('quote B: what changed by line and by whose doing, to the coin', () => {
    const { lines, net: parts, sum } = valueOf(changedQuote(first.body, second.body));
    expect([parts, sum]).toEqual([{ client: -14_500, us: -3500, supplier: 1000 }, -17_000]);
    expect(lines.filter(({ by }) => by !== 'us').map(({ label, from, to, by }) => [by, label, from, to])).toEqual([
      ['client', 'Drainage, soil and leaves', 8121, 7800],
      ['client', 'Work', 61_477, 61_155],
      ['client', 'Oak stand', 13_857, 0],
      ['supplier', 'Tank', 21_520, 22_538],
      ['supplier', 'Work', 59_848, 59_830],
    ]);
    const { net: before, gross, deposit, atHandover } = quoteModel(second.body);
    expect([before, gross, deposit, atHandover]).toEqual(['1650.00', '1833.55', '735.00', '1098.55']);
  });
});

describe('the same from the command line', () => {
  const demo = useDemoBook();
  const Quote = z.object({
    quote: z.string(),
    revision: z.string(),
    net: z.string(),
    gross: z.string(),
    deposit: z.string(),
  });
  const Changed = z.object({ net: z.record(z.string(), z.string()), sum: z.string() });
  const ask = async (...argv: readonly string[]) => lwJson(...argv, '--book', demo.book());

  test('issued, revised, and what changed', async () => {
    edit(demo.book(), (records) => withHouseFigures(libraryJobIn(records)));
    const first = Quote.parse(await ask('quote', '--job', 'J02', '--issue'));
    expect(first).toMatchObject({
      quote: 'Q-0001',
      revision: 'A',
      net: '1820.00',
      gross: '2023.65',
      deposit: '810.00',
    });
    edit(demo.book(), revised);
    const next = Quote.parse(await ask('quote', '--job', 'J02', '--issue'));
    expect(next).toMatchObject({ quote: 'Q-0001', revision: 'B', net: '1650.00', gross: '1833.55', deposit: '735.00' });
    const changed = Changed.parse(await ask('changed', 'Q-0001A', 'Q-0001B'));
    expect([changed.net, changed.sum]).toEqual([net, '-170.00']);
  });
});

function edit(path: string, change: (records: Records) => Records): void {
  const book: Book = valueOf(openBook(path, { today: today(), backups: false }));
  const before = book.records();
  valueOf(book.apply(diffRecords('edit', before, change(before)), book.revision()));
  book.close();
}

function libraryJobIn(records: Records): Records {
  const made = newJob(records, {
    title: 'Reading room',
    client: 'Brackenlume Library',
    recipe: 'H1',
    sizes: [{ tank: 'T05', count: 1 }],
    writings: [{ line: 'soil_rise', text: '0 mm' }],
    by: 'client',
    on: today(),
  });
  return applyChange(records, valueOf(made).change);
}

const stand: QuoteLine = {
  id: 'J02-line-1',
  job: 'J02',
  label: 'Oak stand',
  group: 'hardscape',
  costCoins: 8000,
  by: 'client',
};
const electrician: QuoteLine = {
  id: 'J02-line-2',
  job: 'J02',
  label: 'Electrician',
  group: 'work',
  costCoins: 12_000,
  by: 'us',
};

function withHouseFigures(records: Records): Records {
  const shop = {
    ...workshopOf(records),
    contingencyShare: 0.05,
    plantLossShare: 0.1,
    warrantyShare: 0.02,
    discountShare: 0.03,
    priceStepCoins: 500,
  };
  return withRecords(withRecords(records, 'workshop', [shop]), 'quoteLine', [stand, electrician]);
}

/** The client's wishes, our discount, and the tank's price as the supplier has it now. */
function revised(records: Records): Records {
  const wished = written(records, 'client', { litter: '20 mm' });
  const standless = { ...wished, quoteLine: new Map([...wished.quoteLine].filter(([id]) => id !== stand.id)) };
  const ours = withRecords(standless, 'workshop', [{ ...workshopOf(records), discountShare: 0.05 }]);
  const ofTank = [...records.packPrice.values()].filter(({ pack }) => pack === 'T05-1');
  return withRecords(
    ours,
    'packPrice',
    ofTank.map((price) => ({ ...price, priceCoins: 15_500 })),
  );
}
