import { describe, expect, test } from 'vitest';
import { moveUse, usesFor } from '#shared-calc/acts/move-use.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { sayUseFault, sayWithoutUse } from '#shared-calc/words/say-use.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const lineOf = (use: 'plantQuarantine' | 'panelCure', from: Records) => lineFor(linesOf(from, 'H1'), use)?.id;

describe('moveUse', () => {
  test('another line is read for it, the one before for nothing, and both come back with undo', () => {
    const moved = moveUse({ records }, { line: 'H1.settle_in', use: 'plantQuarantine' });
    if (!moved.ok) throw new Error(sayUseFault(moved.fault));
    const after = applyChange(records, moved.value);

    expect(lineOf('plantQuarantine', after)).toBe('H1.settle_in');
    expect(after.line.get('H1.plant_quarantine')?.use).toBeUndefined();
    expect(applyChange(after, invertChange(moved.value)).line).toEqual(records.line);
  });

  test('a use is taken away from its line', () => {
    const taken = moveUse({ records }, { line: 'H1.panel_cure' });

    expect(taken.ok && lineOf('panelCure', applyChange(records, taken.value))).toBeUndefined();
  });

  test('a line of another kind is refused, with both kinds', () => {
    const refused = moveUse({ records }, { line: 'H1.drainage', use: 'plantQuarantine' });

    expect(refused.ok ? '' : sayUseFault(refused.fault)).toBe(
      'The program reads quarantine as a time, and drainage is a length.',
    );
  });

  test('a line may be read for what is of its own kind', () => {
    expect(usesFor({ unit: 'degC' })).toEqual([
      'roomSummer',
      'roomLowest',
      'roomWinter',
      'tankAir',
      'hottestDay',
      'speciesFloor',
      'speciesCeiling',
      'speciesEmergency',
    ]);
  });
});

describe('sayWithoutUse', () => {
  test('it says what stops', () => {
    expect(sayWithoutUse('plantQuarantine')).toBe(
      'The program reads it: days that new plants stand apart before they are planted. ' +
        'Without it dates, drawings and cards say that no quarantine is given in this recipe.',
    );
  });
});
