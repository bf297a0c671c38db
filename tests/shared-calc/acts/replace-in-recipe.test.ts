import { describe, expect, test } from 'vitest';
import { runAct } from '#shared-calc/acts/act.ts';
import { replaceInRecipe, replacements } from '#shared-calc/acts/replace-in-recipe.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const records = demoRecords();
const derived = derive(records, '2027-03-08');
const all = { recipe: 'H1', whole: true, fields: ['text', 'label', 'says', 'note', 'section'] as const };

describe('replacements', () => {
  test('are shown line by line, before and after, with what could not be read', () => {
    const found = replacements(records, { ...all, fields: ['text'], find: 'edge_bead', replace: 'clay_edge' });
    expect(found.map(({ line, after, fault }) => [line.name, after, fault?.kind])).toEqual([
      ['capping_placed', expect.stringContaining('clay_edge'), expect.any(String)],
      ['soil_placed', 'soil_gross - clay_edge - soil_buried - panel_displaced', expect.any(String)],
    ]);
  });

  test('whole words leave a longer name alone; parts do not', () => {
    const count = (whole: boolean) =>
      replacements(records, { ...all, whole, fields: ['text'], find: 'litter', replace: 'x' }).length;
    expect(count(true)).toBeGreaterThan(0);
    expect(count(false)).toBeGreaterThan(count(true));
  });
});

describe('replaceInRecipe', () => {
  test('replaces words in every line in one act; a name is never touched', () => {
    const input = { recipe: 'H1', find: 'Litter', replace: 'Leaves on the soil', fields: ['label', 'section'] };
    const change = valueOf(runAct(replaceInRecipe, derived, input));
    const next = applyChange(records, change);
    const names = (of: typeof records) => [...of.line.values()].map(({ name }) => name);
    expect(change.label).toBe('Litter replaced in H1');
    expect([...next.line.values()].filter(({ section }) => section === 'Leaves on the soil').length).toBeGreaterThan(0);
    expect(names(next)).toEqual(names(records));
  });

  test('is refused whole where one line could not be read after it', () => {
    const done = runAct(replaceInRecipe, derived, { recipe: 'H1', find: 'soil_gross', replace: 'nothing_known' });
    expect(done.ok).toBe(false);
  });

  test('what is written as a replacement is taken letter by letter', () => {
    const [first] = replacements(records, { ...all, fields: ['section'], find: 'Litter', replace: '$& $1' });
    expect(first?.after).toBe('$& $1');
  });
});
