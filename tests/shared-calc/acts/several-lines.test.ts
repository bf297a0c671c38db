import { describe, expect, test } from 'vitest';
import { breaksOf } from '#shared-calc/acts/line-breaks.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const records = demoRecords();
const whole = { along: false, anyway: false };

describe('removeLines', () => {
  test('a section that others rest on stays, and says what rests on it', () => {
    const says = refused(records, 'removeLines', { recipe: 'H1', section: 'Litter', ...whole });
    expect(says).toContain('It is needed for litter, wet: its rule reads it.');
  });

  test('a section goes with what cannot be worked without it, in one act', () => {
    const { records: after, label } = done(records, 'removeLines', {
      recipe: 'H1',
      section: 'Light',
      along: true,
      anyway: true,
    });
    const lines = linesOf(after, 'H1');
    expect(lines.some(({ section }) => section === 'Light')).toBe(false);
    expect(breaksOf(linesOf(records, 'H1'), lines)).toEqual([]);
    expect(label).toMatch(/^\d+ lines of H1 removed$/);
  });

  test('lines that read only each other go together', () => {
    const lines = ['leaf_sheet', 'leaf_layers', 'leaves_cover', 'cover_after_year', 'litter_days', 'leaves_close'];
    const { records: after } = done(records, 'removeLines', { recipe: 'H1', lines, along: false, anyway: true });
    expect(linesOf(after, 'H1').length).toBe(linesOf(records, 'H1').length - lines.length);
  });
});

describe('takeLines', () => {
  const ofSand = { recipe: 'H1', from: 'H3', lines: ['sand_parts', 'sand_need'], along: false };

  test('lines come in behind a line, in order, under the codes of their new recipe', () => {
    const { records: after } = done(records, 'takeLines', { ...ofSand, after: 'moss_parts' });
    const names = linesOf(after, 'H1').map(({ name }) => name);
    const at = names.indexOf('moss_parts');
    expect(names.slice(at, at + 3)).toEqual(['moss_parts', 'sand_parts', 'sand_need']);
    expect(after.line.get('H1.sand_need')?.material).toBe(records.line.get('H3.sand_need')?.material);
  });

  test('what they read and the recipe does not have is asked about, and comes along', () => {
    const bare = done(records, 'makeRecipe', { id: 'R1', title: 'Bare', answers: bareAnswers }).records;
    const section = { recipe: 'R1', from: 'H1', section: 'Litter', along: false };
    expect(refused(bare, 'takeLines', section)).toContain('They read what R1 does not have: Lip clearance');
    const { records: after } = done(bare, 'takeLines', { ...section, along: true });
    expect(after.line.has('R1.leaves_need') && after.line.has('R1.freeboard')).toBe(true);
  });

  test('a name that is there is asked about: kept, taken, or another one made', () => {
    const litter = { recipe: 'H1', from: 'H3', lines: ['litter'], along: false };
    expect(refused(records, 'takeLines', litter)).toBe(
      'H1 has Litter depth already. Keep its own, take these in their place, or take them under new names.',
    );
    const taken = done(records, 'takeLines', { ...litter, clash: 'take' }).records;
    expect(taken.line.get('H1.litter')?.text).toBe('20 mm');
    const renamed = done(records, 'takeLines', { ...litter, clash: 'rename' }).records;
    expect(renamed.line.get('H1.litter_2')).toMatchObject({ text: '20 mm' });
    expect(renamed.line.get('H1.litter_2')?.use).toBeUndefined();
  });
});

describe('addLine', () => {
  test.each([
    ['given', 'Depth of moss', 'depth_of_moss', 'mm'],
    ['work', 'Rinse the gravel', 'rinse_the_gravel', 'min'],
    ['check', 'Lid closes', 'lid_closes', 'yes_no'],
    ['given', 'min', 'min_2', 'mm'],
  ] as const)('a %s called %s is %s in rules, in %s', (role, label, name, unit) => {
    const { records: after } = done(records, 'addLine', { recipe: 'H1', after: 'litter', role, label });
    const lines = linesOf(after, 'H1');
    const at = lines.findIndex((line) => line.name === 'litter');
    expect(lines[at + 1]).toMatchObject({ name, label, role, unit, section: 'Litter', text: '' });
  });
});

const bareAnswers = {
  drainage: false,
  mesh: false,
  capping: false,
  soil: false,
  mix: [],
  litter: false,
  background: false,
  hardscape: false,
  plants: false,
  microfauna: false,
  light: false,
  mist: false,
};
