import { describe, expect, test } from 'vitest';
import type { BoxCause } from '#shared-calc/bench/bench-types.ts';
import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import { sayBoxCause, sayBoxFault, sayProblem } from '#shared-calc/words/say-box-cause.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function said(line: string, job: Readonly<Record<string, string>>): string | undefined {
  const { cause } = demoBench({ sizes: ['T07'], job }, records).box('T07', line);
  return cause && sayBoxCause(cause, line);
}

describe('sayBoxCause', () => {
  test.each([
    ['litter', { litter: '' }, 'Needs a figure: litter.'],
    ['leaves_need', { litter: '' }, 'Waits on litter. Needs a figure: litter.'],
    ['filled_mass', { dam_height: '' }, 'Waits on dam_height. Needs a figure: dam_height.'],
    ['drainage_need', { drainage_settle: '1200 %' }, 'Settling is a share; 12 % is 0.12.'],
    ['leaves_need', { litter: '-5 mm' }, 'Waits on litter_dry. Depth cannot be below zero.'],
    [
      'capping',
      { drainage: 'capping * 4', capping: 'freeboard', freeboard: 'drainage / 4' },
      'This box depends on itself: capping -> freeboard -> drainage -> capping.',
    ],
    [
      'soil_front',
      { drainage: 'capping * 4', capping: 'freeboard', freeboard: 'drainage / 4' },
      'Waits on drainage. drainage depends on itself.',
    ],
    ['drainage', { drainage: '2 * dam_hieght' }, 'Nothing called dam_hieght. Did you mean dam_height?'],
    ['drainage_need', { drainage: '2 * dam_hieght' }, 'Waits on drainage. The rule of drainage cannot be read.'],
    ['kit', { kit: 'shwo' }, 'kit takes basic, full or show. You gave shwo. Did you mean show?'],
    ['leaf_layers', { leaf_sheet: '0 g/m2' }, 'The rule of leaf_layers divides by zero.'],
    ['leaves_cover', { leaf_sheet: '0 g/m2' }, 'Waits on leaf_layers. The rule of leaf_layers divides by zero.'],
  ])('of %s with %j: %s', (line, job, sentence) => {
    expect(said(line, job as Readonly<Record<string, string>>)).toBe(sentence);
  });

  test('of a box that has its figure there is nothing to say', () => {
    expect(said('litter', {})).toBeUndefined();
  });
});

describe('sayBoxFault', () => {
  test('of a figure that can be read in two ways', () => {
    expect(sayBoxFault({ kind: 'two-readings', text: '8.000', readings: ['8000', '8'] }, 'reservoir')).toBe(
      '8.000 can be read in two ways: 8000 or 8?',
    );
  });

  test('of a figure with the other decimal sign', () => {
    expect(sayBoxFault({ kind: 'other-sign', text: '0,900', sign: 'point', like: '0.900' }, 'inside_length')).toBe(
      'Here the decimal sign is the point: 0.900',
    );
  });

  test('of a choice with nothing near', () => {
    expect(sayBoxFault({ kind: 'not-an-option', text: 'blue', options: ['none', 'tube'] }, 'drain_access')).toBe(
      'drain_access takes none or tube. You gave blue.',
    );
  });
});

describe('sayProblem', () => {
  const line = 'wetting';

  test.each<[BoxProblem, string]>([
    [{ why: 'missing', line }, 'Needs a figure: wetting.'],
    [{ why: 'loop', line }, 'wetting depends on itself.'],
    [{ why: 'faulty', line }, 'The rule of wetting cannot be read.'],
    [{ why: 'refused', line, says: 'Let it drain.' }, 'Let it drain.'],
    [{ why: 'refused', line }, 'wetting has no answer.'],
    [{ why: 'divided by zero', line }, 'The rule of wetting divides by zero.'],
    [{ why: 'no number', line }, 'The rule of wetting comes to no number.'],
  ])('of %j: %s', (problem, sentence) => {
    expect(sayProblem(problem)).toBe(sentence);
  });

  test('of the box itself the name is not said twice', () => {
    const cause: BoxCause = { why: 'waits', problem: { why: 'divided by zero', line } };
    expect([sayBoxCause(cause, line), sayBoxCause(cause, 'water')]).toEqual([
      'The rule of wetting divides by zero.',
      'Waits on wetting. The rule of wetting divides by zero.',
    ]);
  });
});
