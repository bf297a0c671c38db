import { describe, expect, test } from 'vitest';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const cell = (line: string, column = 'T08') => ({ job: 'J01', column, line });
const write = (records: Records, line: string, text: string, column = 'T08') =>
  done(records, 'writeCells', { job: 'J01', cells: [{ line, column, text }] });
const written = ({ localValue }: Records) =>
  [...localValue.values()].map(({ size = 'whole job', line, text, note, by }) => [size, line, text, note, by]);

const gap = write(demo, 'drain_gap', '15').records;

describe('writeCells', () => {
  test('a bare figure has the unit of its line, and the label says it as a builder would', () => {
    const { label, records } = write(demo, 'drain_gap', '15');
    expect(label).toBe('air gap under the mesh of T08 to 15 mm');
    expect(written(records)).toEqual([['J01-T08', 'drain_gap', '15 mm', '', 'us']]);
  });

  test('an emptied cell goes back to the house, or has no figure where it follows the house', () => {
    expect(written(write(gap, 'drain_gap', '').records)).toEqual([]);
    expect(written(write(demo, 'drain_gap', ' ').records)).toEqual([['J01-T08', 'drain_gap', '', '', 'us']]);
  });

  test('of several cells all are written or none, and each that cannot be read is named', () => {
    const cells = [
      { line: 'litter', column: 'T03', text: '20 mm' },
      { line: 'litter', column: 'T07', text: 'dam_hieght / 4' },
      { line: 'litter', column: 'T08', text: '20 L' },
    ];
    expect(refused(demo, 'writeCells', { job: 'J01', cells })).toBe(
      'Litter depth, T07: Nothing called dam_hieght. Did you mean dam_height? Nor can be read: Litter depth, T08. Nothing was written.',
    );
  });

  test.each([
    ['drainage', 'soil_front / 3', 'This box depends on itself: drainage -> soil_front -> drainage.'],
    ['drainage_waste', 'none', 'Waste, T08: Nothing called none.'],
    ['drian_gap', '15', 'Nothing called drian_gap. Did you mean drain_gap?'],
  ])('%s cannot be %s', (line, text, says) => {
    expect(refused(demo, 'writeCells', { job: 'J01', cells: [{ line, column: 'T08', text }] })).toContain(says);
  });

  test('a size that the job has not is named with those it has', () => {
    expect(refused(demo, 'writeCells', { job: 'J01', cells: [{ line: 'litter', column: 'T99', text: '1' }] })).toBe(
      'No size T99 in this job. Sizes: T03, T07, T08.',
    );
  });
});

describe('backToHouse', () => {
  test('a local value goes; where there is none, the value of the whole job', () => {
    expect(done(gap, 'backToHouse', { job: 'J01', cells: [cell('drain_gap')] }).label).toBe(
      'air gap under the mesh of T08 back to house',
    );
    const whole = done(gap, 'holdForJob', cell('drain_gap')).records;
    const back = done(whole, 'backToHouse', { job: 'J01', cells: [cell('drain_gap', 'T03')] });
    expect([back.label, written(back.records)]).toEqual(['air gap under the mesh of the whole job back to house', []]);
  });

  test('what follows the house is not taken back', () => {
    expect(refused(demo, 'backToHouse', { job: 'J01', cells: [cell('drain_gap')] })).toBe(
      'This follows the house already.',
    );
  });
});

describe('holdForJob', () => {
  test('the value moves from its size to the whole job with its note and who asked for it', () => {
    const noted = done(gap, 'noteCell', { ...cell('drain_gap'), note: 'as in the hall' }).records;
    const byClient = done(noted, 'sayWhoAsked', { ...cell('drain_gap'), by: 'client' }).records;
    expect(written(done(byClient, 'holdForJob', cell('drain_gap')).records)).toEqual([
      ['whole job', 'drain_gap', '15 mm', 'as in the hall', 'client'],
    ]);
  });

  test('a text can be given with it; a rule that reads itself in any size is refused', () => {
    expect(done(demo, 'holdForJob', { ...cell('litter'), text: '25' }).label).toBe(
      'litter depth of the whole job to 25 mm',
    );
    expect(refused(demo, 'holdForJob', cell('litter'))).toBe(
      'Write a value in this box first; then it can hold for the whole job.',
    );
    expect(refused(demo, 'holdForJob', { ...cell('drainage'), text: 'soil_front / 3' })).toContain('depends on itself');
  });
});

describe('noteCell and sayWhoAsked', () => {
  test('stand beside a value that is written over, and nowhere else', () => {
    expect(done(gap, 'noteCell', { ...cell('drain_gap'), note: 'tall' }).label).toBe(
      'note on air gap under the mesh of T08',
    );
    expect(done(gap, 'sayWhoAsked', { ...cell('drain_gap'), by: 'client' }).label).toBe(
      'air gap under the mesh of T08, asked for by the client',
    );
    expect(refused(demo, 'noteCell', { ...cell('drain_gap'), note: 'tall' })).toBe(
      'A note stands beside a local value: write one first.',
    );
    expect(refused(demo, 'sayWhoAsked', { ...cell('drain_gap'), by: 'us' })).toBe(
      'Only a local value has somebody who asked for it: write one first.',
    );
  });
});

describe('sendToHouse', () => {
  test('the recipe takes the value and its note, and the size follows the house again', () => {
    const noted = done(gap, 'noteCell', { ...cell('drain_gap'), note: 'measured' }).records;
    const { label, records } = done(noted, 'sendToHouse', cell('drain_gap'));
    const line = records.line.get('H1.drain_gap');
    expect([label, line?.text, line?.note, written(records)]).toEqual([
      'air gap under the mesh of the house to 15 mm',
      '15 mm',
      'measured',
      [],
    ]);
  });

  test('a measurement of one tank is not sent', () => {
    const measured = write(demo, 'inside_height', '440').records;
    expect(refused(measured, 'sendToHouse', cell('inside_height'))).toBe(
      'A measurement belongs to its tank: change it in the tank book.',
    );
  });
});

describe('setKit', () => {
  test('another kit is a local value; the kit of the house takes it away', () => {
    const show = done(demo, 'setKit', { job: 'J01', column: 'T07', kit: 'show' }).records;
    expect(written(show)).toEqual([['J01-T07', 'kit', 'show', '', 'us']]);
    expect(written(done(show, 'setKit', { job: 'J01', column: 'T07', kit: 'full' }).records)).toEqual([]);
  });
});
