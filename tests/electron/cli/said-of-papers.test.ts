import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { paperCommand } from '#electron/cli/commands/paper.ts';
import { readArguments } from '#electron/cli/read-arguments.ts';
import { monthNames } from '#shared-calc/calendar/write-day.ts';
import { paperKinds } from '#shared-calc/papers/all-papers.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { lw, useDemoBook } from './run-cli.ts';

/*
 * Every paper in full, of one job: a T05 for a library with small children, with a one-off line, and a batch of leaves.
 * `papers/KIND.txt` is the text, `KIND.json` the data, `KIND.csv` the list if the paper has one.
 */

const folder = path.join(import.meta.dirname, 'papers');
const { book } = useDemoBook('2027-03-08');
const fields = {
  client: 'Brackenlume Library',
  contact: 'Ida Thorn',
  site: 'By the tall window',
  access: 'One step, a lift',
  audience: 'Children under five on weekday mornings',
  animals: 'Small frogs, one kind',
  area: 'Old Town',
};
const survey = {
  underFives: 'yes',
  weakImmunity: 'no',
  publicRoom: 'no',
  clearLengthMm: 2480,
  clearDepthMm: 620,
  clearHeightMm: 940,
  narrowestMm: 780,
  steps: 4,
  sunHours: 0,
  humidityWinter: 0.45,
};
const kit = { id: 'J02-kit', job: 'J02', label: 'Waterfall kit', group: 'mist', costCoins: 12_000, by: 'us' };
const batch = {
  id: 'L01',
  material: 'M15',
  litres: 8.81,
  way: 'steam',
  aim: 'sterile',
  on: '2027-03-06',
  collectedAt: 'Withy Wood, by leave of the estate',
  log: [],
  note: 'Second sieve',
};

beforeAll(async () => {
  const job = ['job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--set', 'soil_rise=0 mm'];
  await done(...job, '--handover', '2027-06-30');
  await done('act', 'writeJob', JSON.stringify({ job: 'J02', fields }));
  await done('act', 'writeSurvey', JSON.stringify({ job: 'J02', survey }));
  await done('act', 'put', JSON.stringify({ kind: 'quoteLine', record: kit }));
  await done('act', 'put', JSON.stringify({ kind: 'treatmentBatch', record: batch }));
});

describe('what is printed of a paper', () => {
  test.each(paperKinds)('$kind: $says', async ({ kind, of }) => {
    const { text, json, csv } = await paper(kind, ...(of === 'workshop' ? [] : ['--job', 'J02']));
    expect(text).toBe(written(`${kind}.txt`));
    expect(json).toEqual(JSON.parse(written(`${kind}.json`)));
    expect(csv?.replaceAll('\r\n', '\n')).toBe(lists.includes(kind) ? written(`${kind}.csv`) : undefined);
  });

  test.each(['steam', 'bake'])('treatment, by %s', async (way) => {
    const { text } = await paper('treatment', '--job', 'J02', '--way', way);
    expect(text).toBe(written(`treatment-${way}.txt`));
  });
});

describe('where the month comes first', () => {
  beforeAll(async () => {
    const record = { ...workshopOf(demoRecords()), dateOrder: 'mdy' };
    await done('act', 'put', JSON.stringify({ kind: 'workshop', record }));
  });

  test.each(paperKinds)('$kind says no day in another order', async ({ kind, of }) => {
    const { text } = await paper(kind, ...(of === 'workshop' ? [] : ['--job', 'J02']));
    expect(otherOrders(text)).toEqual([]);
  });

  test.each([
    ['prepare', '--job', 'J02'],
    ['today', '--days', '60'],
    ['jobs'],
    ['order', 'list'],
    ['cultures', '--jobs', 'J02'],
    ['tub', 'list'],
  ])('%s %s', async (...argv) => {
    const { code, out } = await lw(...argv, '--on', '2027-03-08', '--book', book());
    expect([code, otherOrders(out)]).toEqual([0, []]);
  });
});

/** Days said with the day of the month first, or as data are. */
function otherOrders(text: string): readonly string[] {
  const months = monthNames.map((name) => `${name}|${name.slice(0, 3)}`).join('|');
  return text.match(new RegExp(String.raw`\b\d{1,2} (?:${months})\b|\b\d{4}-\d\d-\d\d`, 'g')) ?? [];
}

const lists = readdirSync(folder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => path.basename(name, '.csv'));

function written(name: string): string {
  return readFileSync(path.join(folder, name), 'utf8');
}

/** A paper in each of its forms, computed once. */
async function paper(...argv: readonly string[]) {
  const given = readArguments([...argv, '--on', '2027-03-08', '--book', book()], paperCommand.options);
  if (!given.ok) throw new Error(given.fault);
  const outcome = await paperCommand.run(given.value);
  if (outcome.is !== 'answer') throw new Error(JSON.stringify(outcome));
  const json: unknown = JSON.parse(JSON.stringify(outcome.json));
  return { text: `${outcome.table()}\n`, json, csv: outcome.csv?.() };
}

async function done(...argv: readonly string[]): Promise<void> {
  const { code, err } = await lw(...argv, '--book', book());
  expect({ code, fault: code === 0 ? '' : err }).toEqual({ code: 0, fault: '' });
}
