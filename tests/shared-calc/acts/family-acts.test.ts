import { describe, expect, test } from 'vitest';
import { copyRecipe } from '#shared-calc/acts/copy-recipe.ts';
import { forkRecipe, sendToParent, takeFromParent } from '#shared-calc/acts/family-acts.ts';
import { houseLog } from '#shared-calc/acts/house-acts.ts';
import { addLine, changeLine, removeLine, renameLine, writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { writeLineFor } from '#shared-calc/acts/tank-line-acts.ts';
import { figuresBetween, recipeDiff } from '#shared-calc/derive/recipe-diff.ts';
import { lineMarks } from '#shared-calc/recipe/family-marks.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { doneAndBack as done, refusedOrDone as refused } from '#tests/shared-calc/acts/do-act.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

const forked = done(forkRecipe, { recipe: 'H1', id: 'H5', title: 'Dry planted', who: 'R-builder' }, records);
const both = done(forkRecipe, { recipe: 'H1', id: 'H6' }, forked);

const textOf = (from: Records, recipe: string, name: string) =>
  linesOf(from, recipe).find((line) => line.name === name)?.text;
const marksOf = (from: Records, recipe = 'H5') =>
  lineMarks(from, recipe).map(({ name, is, moved }) => [name, is, moved]);
const logOf = (from: Records, recipe: string) =>
  houseLog(from, recipe).map(({ how, of, by, note, before, after }) => [
    (after ?? before)?.name ?? null,
    how ?? null,
    of ?? null,
    by ?? null,
    note,
  ]);

describe('forkRecipe', () => {
  test('a child has all lines of its parent and no difference, and its log begins with it', () => {
    expect(both.recipe.get('H5')).toEqual({ id: 'H5', title: 'Dry planted', note: '', parent: 'H1' });
    expect([recipeDiff({ records: both, recipe: 'H1' }, { records: both, recipe: 'H5' }), marksOf(both)]).toEqual([
      [],
      [],
    ]);
    expect(logOf(both, 'H5')).toEqual([[null, 'fork', 'H1', 'R-builder', '']]);
    expect(refused(forkRecipe, { recipe: 'H1', id: 'H5' }, both)).toBe(
      'There is a recipe called H5 already: choose another code.',
    );
    expect(refused(forkRecipe, { recipe: 'H1', tanks: ['T99'] }, both)).toBe('There is no tank called T99.');
  });

  test('a whole copy of a child stands alone, with what it has for some tanks', () => {
    const own = done(writeLine, { line: 'H5.litter', text: '20 mm' }, both);
    const always = done(writeLineFor, { line: 'H5.litter', tanks: ['T01'], text: '45 mm' }, own);
    const copied = done(copyRecipe, { recipe: 'H5' }, always);
    expect(copied.recipe.get('H7')?.parent).toBeUndefined();
    expect(linesOf(copied, 'H7').map(({ name, text }) => [name, text])).toEqual(
      linesOf(always, 'H5').map(({ name, text }) => [name, text]),
    );
    expect(linesFor(copied, 'H7', 'T01').find(({ name }) => name === 'litter')?.text).toBe('45 mm');
  });
});

describe('takeFromParent', () => {
  const own = done(writeLine, { line: 'H5.litter', text: '20 mm' }, both);
  const moved = done(writeLine, { line: 'H1.litter', text: '35 mm' }, own);

  test('what the parent changed since is told; taken, the recipe has it', () => {
    expect(refused(takeFromParent, { recipe: 'H5' }, own)).toBe('H1 has nothing new in what H5 changes.');
    expect(marksOf(moved)).toEqual([['litter', 'changed', expect.arrayContaining(['text'])]]);
    const taken = done(takeFromParent, { recipe: 'H5', who: 'R-builder' }, moved);
    expect([textOf(taken, 'H5', 'litter'), marksOf(taken)]).toEqual(['35 mm', []]);
    expect(logOf(taken, 'H5')).toContainEqual(['litter', 'take', 'H1', 'R-builder', '']);
  });

  test('kept, the recipe has its own and nothing is left to compare', () => {
    const kept = done(takeFromParent, { recipe: 'H5', keep: true }, moved);
    expect([textOf(kept, 'H5', 'litter'), marksOf(kept)]).toEqual(['20 mm', [['litter', 'changed', []]]]);
    expect(logOf(kept, 'H5').at(-1)?.[4]).toMatch(/^H5 keeps litter depth$/);
  });

  test('a line that is left out comes back; one that it adds is not the parent’s to give', () => {
    const without = done(removeLine, { line: 'H5.lift_filled' }, own);
    expect(textOf(done(takeFromParent, { recipe: 'H5', lines: ['lift_filled'] }, without), 'H5', 'lift_filled')).toBe(
      textOf(both, 'H1', 'lift_filled'),
    );
    const added = done(addLine, { recipe: 'H5', after: 'litter' }, own);
    expect(refused(takeFromParent, { recipe: 'H5', lines: ['figure'] }, added)).toBe(
      'H5 differs in no line called figure.',
    );
    expect(refused(takeFromParent, { recipe: 'H1' }, added)).toBe('H1 has no parent: it stands alone.');
  });
});

describe('sendToParent', () => {
  const added = done(
    renameLine,
    { line: 'H5.figure', name: 'pump_room' },
    done(addLine, { recipe: 'H5', after: 'drain_gap' }, both),
  );
  const written = done(
    writeLine,
    { line: 'H5.figure', text: 'drain_gap + 5 mm' },
    done(writeLine, { line: 'H5.drain_gap', text: '15 mm' }, added),
  );
  const own = done(removeLine, { line: 'H5.lift_filled' }, written);
  const theirs = done(writeLine, { line: 'H6.drain_gap', text: '30 mm' }, own);

  test('the parent has it, the recipe no difference, and what overrides it keeps its own', () => {
    const sent = done(sendToParent, { recipe: 'H5', note: 'As built for the school.' }, theirs);
    expect(marksOf(sent)).toEqual([]);
    expect(linesOf(sent, 'H5')).toEqual(linesOf(theirs, 'H5'));
    expect([textOf(sent, 'H1', 'pump_room'), textOf(sent, 'H6', 'pump_room')]).toEqual([
      'drain_gap + 5 mm',
      'drain_gap + 5 mm',
    ]);
    expect([textOf(sent, 'H1', 'drain_gap'), textOf(sent, 'H6', 'drain_gap')]).toEqual(['15 mm', '30 mm']);
    expect([textOf(sent, 'H1', 'lift_filled'), textOf(sent, 'H6', 'lift_filled')]).toEqual([undefined, undefined]);
    expect(logOf(sent, 'H1')).toContainEqual(['drain_gap', 'send', 'H5', null, 'As built for the school.']);
    expect(logOf(sent, 'H5').at(-1)).toEqual([null, 'send', 'H1', null, 'As built for the school.']);
    expect(logOf(sent, 'H6')).toContainEqual(['pump_room', 'from parent', 'H1', null, '']);
  });

  test('lines that rest on one that is not sent are refused by name', () => {
    expect(refused(sendToParent, { recipe: 'H5', lines: ['pump_room'] }, theirs)).toBe('done');
    const reads = done(writeLine, { line: 'H5.capping', text: 'pump_room' }, theirs);
    expect(refused(sendToParent, { recipe: 'H5', lines: ['capping'] }, reads)).toMatch(
      /^In H1: This would break Capping/,
    );
  });

  const onTank = (from: Records, recipe: string, tank: string, name = 'litter') =>
    linesFor(from, recipe, tank).find((line) => line.name === name)?.text;
  const litter = (from: Records) =>
    ['H1', 'H5', 'H6'].map((recipe) => ['T01', 'T02', 'T03'].map((tank) => onTank(from, recipe, tank)));
  const always = done(writeLineFor, { line: 'H5.litter', tanks: ['T01'], text: '45 mm' }, theirs);
  const usual = textOf(theirs, 'H1', 'litter');

  test('what is for some tanks stays there, unless it is said to go up', () => {
    const sent = done(sendToParent, { recipe: 'H5' }, always);
    expect([...sent.difference.values()].filter((mark) => mark.for).map(({ recipe }) => recipe)).toEqual(['H5']);
    expect(refused(sendToParent, { recipe: 'H5', lines: ['litter'] }, always)).toBe(
      'H5 differs in litter depth only for some tanks: send it up for these tanks, or for all.',
    );
    expect(refused(takeFromParent, { recipe: 'H5', lines: ['litter'] }, always)).toBe(
      'H5 differs in litter depth only for some tanks: take it for these tanks too.',
    );
  });

  test('sent up for the same tanks, the house has it for them alone, and all that inherit it', () => {
    const sent = done(sendToParent, { recipe: 'H5', lines: ['litter'], tanks: 'same' }, always);
    const eachHas = ['45 mm', usual, usual];
    expect(litter(sent)).toEqual([eachHas, eachHas, eachHas]);
    expect([...sent.difference.values()].filter((mark) => mark.for).map(({ recipe }) => recipe)).toEqual(['H1']);
  });

  test('sent up for all tanks, it is the figure of the house; what another tank always has there stays', () => {
    const third = done(writeLineFor, { line: 'H1.litter', tanks: ['T03'], text: '60 mm' }, always);
    const sent = done(sendToParent, { recipe: 'H5', lines: ['litter'], tanks: 'all' }, third);
    const eachHas = ['45 mm', '45 mm', '60 mm'];
    expect(litter(sent)).toEqual([eachHas, eachHas, eachHas]);
  });

  test('where tanks differ among themselves, one of them is named', () => {
    const two = done(writeLineFor, { line: 'H5.litter', tanks: ['T02'], text: '20 mm' }, always);
    expect(refused(sendToParent, { recipe: 'H5', lines: ['litter'], tanks: 'all' }, two)).toBe(
      'Litter depth is one figure for T01, another for T02: say whose goes up for all.',
    );
    const sent = done(sendToParent, { recipe: 'H5', lines: ['litter'], tanks: 'all', of: 'T02' }, two);
    expect(litter(sent)[1]).toEqual(['45 mm', '20 mm', '20 mm']);
    expect(litter(sent)[0]).toEqual(['20 mm', '20 mm', '20 mm']);
  });

  test('what the house always has for a tank does not come down on a recipe that had its own figure', () => {
    const thin = done(writeLine, { line: 'H5.litter', text: '25 mm' }, theirs);
    const house = done(writeLineFor, { line: 'H1.litter', tanks: ['T03'], text: '60 mm' }, thin);
    const sent = done(sendToParent, { recipe: 'H5', lines: ['litter'] }, house);
    expect(litter(sent).slice(0, 2)).toEqual([
      ['25 mm', '25 mm', '60 mm'],
      ['25 mm', '25 mm', '25 mm'],
    ]);
  });

  test('an added line that gets another code above keeps what is written on it below', () => {
    const other = done(addLine, { recipe: 'H6', after: 'drain_gap', label: 'Pump room' }, always);
    const renamed = done(renameLine, { line: 'H6.pump_room', name: 'sump' }, other);
    const figure = done(addLine, { recipe: 'H5', after: 'drain_gap', label: 'Pump room, wide' }, renamed);
    const line = linesOf(figure, 'H5').find(({ label }) => label === 'Pump room, wide');
    const named = done(renameLine, { line: line?.id, name: 'wide' }, figure);
    const below = done(forkRecipe, { recipe: 'H5', id: 'H8' }, named);
    const limited = done(writeLineFor, { line: line?.id, tanks: ['T01'], text: '7 mm' }, below);
    const sent = done(sendToParent, { recipe: 'H5', lines: ['wide'] }, limited);
    expect(['H1', 'H5', 'H8'].map((recipe) => onTank(sent, recipe, 'T01', 'wide'))).toEqual(['', '7 mm', '7 mm']);
  });
});

describe('takeFromParent of a line that is for some tanks', () => {
  test('it is as for the others again', () => {
    const always = done(writeLineFor, { line: 'H5.litter', tanks: ['T01'], text: '45 mm' }, both);
    const taken = done(takeFromParent, { recipe: 'H5', lines: ['litter'], tanks: 'take' }, always);
    expect([taken.difference.size, logOf(taken, 'H5').at(-1)?.slice(0, 3)]).toEqual([0, ['litter', 'take', 'H1']]);
  });
});

describe('recipeDiff', () => {
  test('lines that differ are told with what they come to on a tank', () => {
    const own = done(
      changeLine,
      { line: 'H5.litter', fields: { note: 'Thin.' } },
      done(writeLine, { line: 'H5.drain_gap', text: '15 mm' }, both),
    );
    const [left, right] = [
      { records: own, recipe: 'H1' },
      { records: own, recipe: 'H5' },
    ];
    expect(
      recipeDiff(left, right).map(({ line, change, keys }) => [
        line,
        change,
        keys.includes('text'),
        keys.includes('note'),
      ]),
    ).toEqual([
      ['drain_gap', 'changed', true, false],
      ['litter', 'changed', false, true],
    ]);
    const figures = figuresBetween(left, right, 'T07');
    expect(figures.get('drain_gap')).toEqual({ from: 0.01, to: 0.015, moved: true });
    expect([...figures].filter(([, { moved }]) => moved).map(([line]) => line)).toContain('drain_room');
  });
});
