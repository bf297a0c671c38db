import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { cautionLists } from './all-cards.ts';

/*
 * Every card of one T07 with the cautions of each act, in order. The table is
 * `cautions.txt`; a setting after the first lists only the rows that differ from it.
 */

interface Setting {
  readonly recipe?: string;
  readonly job?: Readonly<Record<string, string>>;
}

const settings: Readonly<Record<string, Setting>> = {
  'the full kit, as the house has it': {},
  'the show kit: mist, background on three walls, drain tap': { job: { kit: 'show' } },
  'the basic kit: no mist, no background, no drain tap': { job: { kit: 'basic' } },
  'no kit chosen yet: what may be there is cautioned for': { job: { kit: '' } },
  'in a public place': { job: { public_site: 'yes' } },
  'nobody has said whether the place is public': { job: { public_site: '' } },
  'the screen comes out from under the lamps': { job: { screen_under_lamps: 'no' } },
  'the screen stays under the lamps': { job: { screen_under_lamps: 'yes' } },
  'the client brings the tank': { job: { client_tank: 'yes' } },
  'no drainage': { job: { drainage: '0 mm', drain_gap: '0 mm' } },
  'no leaves': { job: { litter: '0 mm' } },
  'recipe H2': { recipe: 'H2' },
  'recipe H3': { recipe: 'H3' },
  'recipe H4': { recipe: 'H4' },
};

const table = readTable(path.join(import.meta.dirname, 'cautions.txt'));

describe('cautions on the cards', () => {
  test('the table has every setting', () => {
    expect(table.map(({ title }) => title)).toEqual(Object.keys(settings));
  });

  test.each(Object.entries(settings))('%s', (title, { recipe = 'H1', job = {} }) => {
    const rows = cautionLists(job, recipe).map(([act, steps]) => `${act}: ${steps.join(' | ')}`.trim());
    const usual = table[0]?.rows ?? [];
    const wanted = table.find((each) => each.title === title)?.rows ?? [];
    expect(title === table[0]?.title ? rows : differing(rows, usual)).toEqual(wanted);
  });
});

/** `+` marks a row only in this list, `-` a row only in the other. */
function differing(rows: readonly string[], usual: readonly string[]): readonly string[] {
  return [
    ...usual.filter((row) => !rows.includes(row)).map((row) => `- ${row}`),
    ...rows.filter((row) => !usual.includes(row)).map((row) => `+ ${row}`),
  ];
}

function readTable(file: string): readonly { readonly title: string; readonly rows: readonly string[] }[] {
  const parts = readFileSync(file, 'utf8').trimEnd().split('\n\n');
  return parts.map((part) => {
    const [title = '', ...rows] = part.split('\n');
    return { title: title.replace(/^# /, ''), rows };
  });
}
