import { describe, expect, test } from 'vitest';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { textResolver } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { demoBench, demoColumn, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const { lines } = demoBench({ sizes: [] }, records).input();

function resolve(name: string, column: ColumnInput, job: Readonly<Record<string, string>> = {}) {
  const line = lines.find((each: Line) => each.name === name);
  if (!line) throw new Error(`no line ${name}`);
  return textResolver(column, new Map(Object.entries(job)))(line);
}

describe('textResolver', () => {
  const t07 = demoColumn(records, 'T07');

  test('the house stands where nobody wrote anything', () => {
    expect(resolve('litter', t07)).toEqual({ text: '30 mm', source: 'house' });
  });

  test('the tank book supplies measurements', () => {
    expect(resolve('dam_height', t07)).toEqual({ text: '150 mm', source: 'tank' });
  });

  test('what is written for the whole job stands before house and tank', () => {
    const job = { litter: '20 mm', dam_height: '120 mm' };
    expect([resolve('litter', t07, job), resolve('dam_height', t07, job)]).toEqual([
      { text: '20 mm', source: 'job' },
      { text: '120 mm', source: 'job' },
    ]);
  });

  test('a local value stands before all others', () => {
    const local = demoColumn(records, 'T07', { litter: '10 mm', dam_height: '90 mm' });
    const job = { litter: '20 mm', dam_height: '120 mm' };
    expect([resolve('litter', local, job), resolve('dam_height', local, job)]).toEqual([
      { text: '10 mm', source: 'local' },
      { text: '90 mm', source: 'local' },
    ]);
  });

  test('an empty text is written over too: a missing figure, not the house again', () => {
    expect(resolve('litter', demoColumn(records, 'T07', { litter: '' }), { litter: '20 mm' })).toEqual({
      text: '',
      source: 'local',
    });
    expect(resolve('litter', t07, { litter: '' })).toEqual({ text: '', source: 'job' });
  });
});
