import { describe, expect, test } from 'vitest';
import {
  addLine,
  breaksWithout,
  changeLine,
  copyRecipe,
  jobsWriting,
  moveLine,
  removeLine,
  renameLine,
} from '#renderer/store/recipe-changes.ts';
import { linesOf } from '#shared-calc/jobs/open-sheet.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Line, LocalValue, Records } from '#shared-calc/records/records.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

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
    const done = renameLine(start, line('dam_height'), 'lip_height');
    if (!done.ok) throw new Error(done.fault);
    const after = applyChange(start, done.value);
    expect(names(after)).not.toContain('dam_height');
    expect(after.localValue.get(local.id)?.text).toBe('lip_height / 2');
    const other = renameLine(records, line('soil_front'), 'front_soil');
    if (!other.ok) throw new Error(other.fault);
    const renamed = applyChange(records, other.value);
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
    expect(renameLine(records, line('drain_gap'), name)).toEqual({ ok: false, fault: says });
  });
});

describe('addLine', () => {
  test('a new line stands straight after the chosen one, in its section', () => {
    const made = addLine(records, 'H1', 'drain_gap');
    const after = applyChange(records, made.change);
    const all = names(after);
    expect(all[all.indexOf('drain_gap') + 1]).toBe(made.name);
    expect(line(made.name, after).section).toBe('Drainage');
    expect(addLine(after, 'H1', 'drain_gap').name).not.toBe(made.name);
  });
});

describe('moveLine', () => {
  test("a line goes one place down, and over its section's edge into the next", () => {
    const down = moveLine(records, line('drainage'), 1);
    if (!down.ok) throw new Error(down.fault);
    const all = names(applyChange(records, down.value));
    expect(all.indexOf('drainage')).toBe(names(records).indexOf('drainage') + 1);
    const over = moveLine(records, line('drainage'), -1);
    if (!over.ok) throw new Error(over.fault);
    expect(line('drainage', applyChange(records, over.value)).section).toBe('Tank');
    expect(moveLine(records, line('altitude'), -1)).toEqual({
      ok: false,
      fault: 'Altitude is the first line already.',
    });
  });
});

describe('removeLine', () => {
  test('what would break is named before a line goes', () => {
    expect(breaksWithout(records, line('drain_gap')).map((each) => [each.line, each.says])).toEqual([
      ['drain_room', expect.stringContaining('Nothing called drain_gap.')],
    ]);
    expect(breaksWithout(records, line('lift_filled'))).toEqual([]);
    expect(names(applyChange(records, removeLine(records, line('lift_filled'))))).not.toContain('lift_filled');
  });
});

describe('breaksWithout', () => {
  test('a check whose sentence says the line, and a rule that a job has written, are named too', () => {
    const said = { ...line('public_site'), says: 'So deep: {drain_gap}.' };
    const written: LocalValue = { id: 'v1', job: 'J01', line: 'capping', text: 'drain_gap + 5 mm', note: '', by: 'us' };
    const now: Records = {
      ...records,
      line: new Map([...records.line, [said.id, said]]),
      localValue: new Map([...records.localValue, ['v1', written]]),
    };
    const labels = breaksWithout(now, line('drain_gap')).map((each) => each.label);
    expect(labels).toEqual(['Room for water', 'Public site', 'Capping depth in J01']);
  });
});

describe('jobsWriting', () => {
  test('names the jobs that have a value of their own in the line', () => {
    const written: LocalValue = { id: 'v1', job: 'J01', line: 'drain_gap', text: '15 mm', note: '', by: 'us' };
    const now: Records = { ...records, localValue: new Map([['v1', written]]) };
    expect([jobsWriting(now, line('drain_gap')), jobsWriting(now, line('capping'))]).toEqual([['J01'], []]);
  });
});

describe('changeLine', () => {
  test('a line that becomes a check is a yes or no, one that becomes work is minutes', () => {
    const made = addLine(records, 'H1', 'drain_gap');
    const now = applyChange(records, made.change);
    const units = (['check', 'work', 'need'] as const).map((role) => {
      const done = changeLine(now, line(made.name, now), { role });
      return done.ok ? line(made.name, applyChange(now, done.value)).unit : done.fault;
    });
    expect(units).toEqual(['yes_no', 'min', 'mm']);
  });

  test('a unit of another kind than the program reads the line for is refused', () => {
    const waits = { ...line('plant_quarantine'), text: '' };
    const start = { ...records, line: new Map(records.line).set(waits.id, waits) };
    const done = changeLine(start, waits, { unit: 'L' });
    expect(done.ok ? '' : done.fault).toBe(
      'The program reads it: days that new plants stand apart before they are planted. Without it dates, drawings and ' +
        'cards say that no quarantine is given in this recipe. Move that use to another line first.',
    );
  });

  test('a unit under which a rule could no longer be read is refused, and what it would break is named', () => {
    const done = changeLine(records, line('drain_gap'), { unit: 'L' });
    expect(done.ok ? '' : done.fault).toMatch(/^This would break Air gap under the mesh, Room for water\./);
  });

  test.each([
    [{ unit: 'spoons' }, 'There is no unit called spoons.'],
    [{ low: 60 }, 'The low bound lies above the high one.'],
    [{ says: 'Only {soil_frnt}.' }, '{soil_frnt} in the sentence names no line.'],
  ])('%j is refused with its reason', (fields, says) => {
    expect(changeLine(records, line('drain_gap'), fields)).toEqual({ ok: false, fault: says });
  });

  test('other bounds are one change, named by what they are', () => {
    const done = changeLine(records, line('drain_gap'), { high: 60 });
    expect(done.ok && done.value.label).toBe('air gap under the mesh: high bound');
  });
});

describe('copyRecipe', () => {
  test('a copy is a recipe of its own with all lines, and works to the same figures', () => {
    const recipe = records.recipe.get('H1');
    if (!recipe) throw new Error('no recipe');
    const made = copyRecipe(records, recipe);
    const after = applyChange(records, made.change);
    expect([made.id, after.recipe.get('H5')?.title]).toEqual(['H5', 'Copy of humid planted']);
    expect(linesOf(after, 'H5').map((each) => each.name)).toEqual(names(records));
    const bench = demoBench({ recipe: 'H5', sizes: ['T07'] }, after);
    expect(bench.box('T07', 'filled_mass').value).toBe(
      demoBench({ sizes: ['T07'] }, records).box('T07', 'filled_mass').value,
    );
  });
});
