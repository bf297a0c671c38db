import { describe, expect, test } from 'vitest';
import { runAct, type Act } from '#shared-calc/acts/act.ts';
import { put, remove } from '#shared-calc/acts/book-acts.ts';
import { copyRecipe } from '#shared-calc/acts/copy-recipe.ts';
import { readersOf } from '#shared-calc/acts/line-breaks.ts';
import { addLine, changeLine, moveLine, removeLine, renameLine, writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Line, LocalValue, Records } from '#shared-calc/records/records.ts';
import { faultJson, sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY, demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

const run = (act: Act, input: unknown, from: Records = records) => runAct(act, derive(from, DEMO_DAY), input);

/** The records with an act done. */
function done(act: Act, input: unknown, from: Records = records): Records {
  const made = run(act, input, from);
  if (!made.ok) throw new Error(sayActFault(made.fault));
  return applyChange(from, made.value);
}

function refused(act: Act, input: unknown, from: Records = records): string {
  const made = run(act, input, from);
  return made.ok ? 'done' : sayActFault(made.fault);
}

/** What stands against an act, as programs are told. */
function against(act: Act, input: unknown, from: Records = records) {
  const made = run(act, input, from);
  return made.ok ? [] : faultJson(made.fault).against?.map(({ what, why }) => `${what}: ${why}`);
}

function line(name: string, from: Records = records): Line {
  const found = [...from.line.values()].find((each) => each.recipe === 'H1' && each.name === name);
  if (!found) throw new Error(`no line ${name}`);
  return found;
}

const names = (from: Records) => linesOf(from, 'H1').map((each) => each.name);

describe('renameLine', () => {
  test('a line is renamed through every rule, sentence and local value, and every figure stays', () => {
    const local = {
      id: 'J01-T07.soil_front',
      job: 'J01',
      size: 'J01-T07',
      line: 'soil_front',
      text: 'dam_height / 2',
      note: '',
      by: 'us',
    } as const;
    const start = { ...records, localValue: new Map([[local.id, local]]) };
    const after = done(renameLine, { line: 'H1.dam_height', name: 'lip_height' }, start);
    expect(names(after)).not.toContain('dam_height');
    expect(after.localValue.get(local.id)?.text).toBe('lip_height / 2');
    const renamed = done(renameLine, { line: line('soil_front').id, name: 'front_soil' });
    expect(line('soil_enough', renamed).says).toBe(
      'Only {front_soil} of soil at the front; most plants need 40 mm or more.',
    );
    const [before, now] = [demoBench({ sizes: ['T07'] }, records), demoBench({ sizes: ['T07'] }, renamed)];
    const figures = (of: typeof before) => of.input().lines.map((each) => of.box('T07', each.name).value);
    expect(figures(now)).toEqual(figures(before));
  });

  test.each([
    ['drainage', 'There is a line called drainage already.'],
    ['mm', 'mm is a unit; choose a longer name.'],
    ['Drain', 'Drain has D in it; names are small letters a to z, digits and _.'],
    ['clamp', 'clamp is a function; choose another name.'],
    ['', 'A line needs a name, such as drain_gap.'],
  ])('%j is refused with its reason', (name, says) => {
    expect(refused(renameLine, { line: 'H1.drain_gap', name })).toBe(says);
  });
});

describe('addLine', () => {
  test('a new line stands straight after the chosen one, in its section', () => {
    const after = done(addLine, { recipe: 'H1', after: 'drain_gap' });
    const all = names(after);
    expect(all[all.indexOf('drain_gap') + 1]).toBe('figure');
    expect(line('figure', after).section).toBe('Drainage');
    expect(names(done(addLine, { recipe: 'H1' }, after)).at(-1)).toBe('figure_2');
    expect(refused(addLine, { recipe: 'H9' })).toMatch(/^There is no recipe H9\./);
  });
});

describe('moveLine', () => {
  test("a line goes one place down, and over its section's edge into the next", () => {
    const all = names(done(moveLine, { line: 'H1.drainage', to: 'down' }));
    expect(all.indexOf('drainage')).toBe(names(records).indexOf('drainage') + 1);
    expect(line('drainage', done(moveLine, { line: 'H1.drainage', to: 'up' })).section).toBe('Tank');
    expect(refused(moveLine, { line: 'H1.altitude', to: 'up' })).toBe('Altitude is the first line already.');
  });
});

const written: LocalValue = { id: 'v1', job: 'J01', line: 'capping', text: 'drain_gap + 5 mm', note: '', by: 'us' };
const withWritten = (value: LocalValue): Records => ({ ...records, localValue: new Map([[value.id, value]]) });

describe('removeLine', () => {
  test('a line that nothing needs goes', () => {
    expect(names(done(removeLine, { line: line('lift_filled').id }))).not.toContain('lift_filled');
  });

  test.each([removeLine, remove])('what needs the line is named, and it stays', (act) => {
    const input = act === removeLine ? { line: 'H1.drain_gap' } : { kind: 'line', id: 'H1.drain_gap' };
    expect(refused(act, input)).toBe(
      'Line H1.drain_gap stays. It is needed for room for water: its rule reads it. It is needed for mass, drain blocked: its rule reads it. It is needed for drain gap: the program reads it for that.',
    );
    const said = { ...line('public_site'), says: 'So deep: {drain_gap}.' };
    const now = { ...withWritten(written), line: new Map([...records.line, [said.id, said]]) };
    expect(against(act, input, now)).toEqual([
      'room for water: its rule reads it',
      'mass, drain blocked: its rule reads it',
      'public site: its sentence names it',
      'capping depth in J01: its rule reads it',
      'drain gap: the program reads it for that',
    ]);
  });

  test('a line that the program reads, and one that a job has written over, stay', () => {
    expect(against(removeLine, { line: 'H1.plant_quarantine' })).toContain('quarantine: the program reads it for that');
    const over = withWritten({ ...written, line: 'lift_filled', text: 'yes' });
    expect(against(removeLine, { line: line('lift_filled').id }, over)).toEqual([
      'job J01: something is written over it there',
    ]);
  });

  test('taken out anyway, it goes with what jobs have written over it', () => {
    const over = withWritten({ ...written, line: 'drain_gap', text: '15 mm' });
    const after = done(removeLine, { line: 'H1.drain_gap', anyway: true }, over);
    expect(names(after)).not.toContain('drain_gap');
    expect([...after.localValue.keys()]).toEqual([]);
  });
});

describe('readersOf', () => {
  test('names the lines whose rule or sentence reads a line', () => {
    expect(readersOf(linesOf(records, 'H1'), 'drain_gap').map(({ name }) => name)).toContain('drain_room');
  });
});

describe('writeLine', () => {
  test('the house takes a figure or a rule', () => {
    expect(line('drain_gap', done(writeLine, { line: 'H1.drain_gap', text: '15 mm' })).text).toBe('15 mm');
  });

  test('another figure is not from where the one before it was; the same figure still is', () => {
    const after = (text: string) => line('mix_settle', done(writeLine, { line: 'H1.mix_settle', text })).source;

    expect(['12 % (8 to 18)', '12 %', '13 % (8 to 18)'].map(after)).toEqual(['practice', undefined, undefined]);
  });

  test.each([
    ['drain_gpa', /^drain_gap=drain_gpa: Nothing called drain_gpa\. Did you mean drain_gap\?/],
    ['drain_gap + 1 mm', /^drain_gap=.* This box depends on itself: drain_gap -> drain_gap\./],
  ])('%j is refused with its reason, by put as well', (text, says) => {
    expect(refused(writeLine, { line: 'H1.drain_gap', text })).toMatch(says);
    expect(refused(put, { kind: 'line', record: { ...line('drain_gap'), text } })).not.toBe('done');
  });
});

describe('changeLine', () => {
  test('a line that becomes a check is a yes or no, one that becomes work is minutes', () => {
    const now = done(addLine, { recipe: 'H1', after: 'drain_gap' });
    const units = (['check', 'work', 'need'] as const).map(
      (role) => line('figure', done(changeLine, { line: 'H1.figure', fields: { role } }, now)).unit,
    );
    expect(units).toEqual(['yes_no', 'min', 'mm']);
  });

  test('a unit of another kind than the program reads the line for is refused', () => {
    const waits = { ...line('plant_quarantine'), text: '' };
    const start = { ...records, line: new Map(records.line).set(waits.id, waits) };
    expect(refused(put, { kind: 'line', record: { ...waits, unit: 'L' } }, start)).toMatch(/Move that use/);
    expect(refused(changeLine, { line: waits.id, fields: { unit: 'L' } }, start)).toBe(
      'The program reads it: days that new plants stand apart before they are planted. Without it dates, drawings and ' +
        'cards say that no quarantine is given in this recipe. Move that use to another line first.',
    );
  });

  test('a unit under which a rule could no longer be read is refused, and what it would break is named', () => {
    const says = /^This would break Air gap under the mesh, Room for water, Mass, drain blocked\./;
    expect(refused(changeLine, { line: 'H1.drain_gap', fields: { unit: 'L' } })).toMatch(says);
    expect(refused(put, { kind: 'line', record: { ...line('drain_gap'), unit: 'L' } })).toMatch(says);
  });

  test.each([
    [{ unit: 'spoons' }, 'There is no unit called spoons.'],
    [{ low: 60 }, 'The low bound lies above the high one.'],
    [{ says: 'Only {soil_frnt}.' }, '{soil_frnt} in the sentence names no line.'],
  ])('%j is refused with its reason', (fields, says) => {
    expect(refused(changeLine, { line: 'H1.drain_gap', fields })).toBe(says);
    expect(refused(put, { kind: 'line', record: { ...line('drain_gap'), ...fields } })).toBe(says);
  });

  test('other bounds are one change, named by what they are', () => {
    const made = run(changeLine, { line: 'H1.drain_gap', fields: { high: 60 } });
    expect(made.ok && made.value.label).toBe('air gap under the mesh: at most');
    const open = done(changeLine, { line: 'H1.drain_gap', fields: { high: null } });
    expect(line('drain_gap', open)).not.toHaveProperty('high');
  });
});

describe('copyRecipe', () => {
  test('a copy is a recipe of its own with all lines, and works to the same figures', () => {
    const after = done(copyRecipe, { recipe: 'H1' });
    expect(after.recipe.get('H5')?.title).toBe('Copy of humid planted');
    expect(linesOf(after, 'H5').map((each) => each.name)).toEqual(names(records));
    const bench = demoBench({ recipe: 'H5', sizes: ['T07'] }, after);
    expect(bench.box('T07', 'filled_mass').value).toBe(
      demoBench({ sizes: ['T07'] }, records).box('T07', 'filled_mass').value,
    );
  });
});
