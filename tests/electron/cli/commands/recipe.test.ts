import { describe, expect, test } from 'vitest';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book } = useDemoBook();

const json = async (...words: readonly string[]) => lwJson(...words, '--book', book());

describe('recipe', () => {
  test('is forked, written, compared, taken and sent up', async () => {
    expect(
      await json('recipe', 'fork', 'H1', 'H5', '--title', 'Dry planted', '--tanks', 'T01', '--season', '10-01..03-31'),
    ).toMatchObject({
      recipe: 'H5',
      title: 'Dry planted',
      parent: 'H1',
      tanks: ['T01'],
      season: { from: '10-01', to: '03-31' },
      changed: 0,
    });
    await json('act', 'writeLine', '{"line":"H5.litter","text":"20 mm"}');
    const diff = await json('recipe', 'diff', 'H1', 'H5', '--sizes', 'T07,T03');
    expect(diff).toMatchObject({
      left: 'H1',
      right: 'H5',
      lines: [
        { line: 'litter', change: 'changed', left: '30 mm', right: '20 mm', figures: { T07: [30, 20], T03: [30, 20] } },
      ],
    });
    await json('act', 'writeLine', '{"line":"H1.litter","text":"35 mm"}');
    expect(await json('recipe', 'take', 'H5', '--sizes', 'T07', '--try')).toMatchObject({
      recipe: 'H5',
      parent: 'H1',
      lines: [{ line: 'litter', left: '20 mm', right: '35 mm', figures: { T07: [20, 35] } }],
    });
    await json('recipe', 'take', 'H5', '--keep', '--who', 'R-builder');
    expect(await json('recipe', 'send', 'H5', '--lines', 'litter', '--note', 'Wears less.')).toMatchObject({
      does: 'litter depth of H5 sent to H1',
      lines: [{ line: 'litter', left: '35 mm', right: '20 mm' }],
    });
    expect(await json('recipe', 'diff', 'H1', 'H5')).toMatchObject({ lines: [], follows: [] });
    expect(await json('recipe', 'log', 'H5')).toMatchObject([
      { how: 'fork', of: 'H1' },
      { line: 'litter', from: '30 mm', to: '20 mm' },
      { how: 'take', of: 'H1', by: 'R-builder' },
      { how: 'send', of: 'H1', note: 'Wears less.' },
    ]);
    expect((await lw('recipe', 'list', '--book', book())).out).toMatch(/H5 +Dry planted +H1 +\d+ +0 +0 +0 +0/);
  });

  test('what a recipe has for a tank alone is told as that, and what is sent up of it', async () => {
    await json('act', 'writeLineFor', '{"line":"H5.litter","tanks":["T01"],"text":"45 mm"}');
    const told = async (...words: readonly string[]) => (await lw('recipe', ...words, '--book', book())).out;
    expect(await told('diff', 'H1', 'H5')).toMatch(/Litter depth, on T01 +changed +20 mm +45 mm/);
    expect(await told('send', 'H5', '--tanks', 'same', '--try')).toMatch(/Litter depth, on T01 +changed +20 mm +45 mm/);
    expect(await told('send', 'H5', '--tanks', 'all', '--try')).toMatch(/Litter depth +changed +20 mm +45 mm/);
    await json('act', 'writeLineFor', '{"line":"H5.litter","tanks":["T01"],"text":null}');
  });

  test('a job of a recipe below is touched by an edit of its parent', async () => {
    await json('act', 'newJob', '{"title":"Gecko","recipe":"H5","sizes":[{"tank":"T07"}]}');
    const proposed = await json('house', 'propose', 'H1', 'litter=25 mm');
    expect(proposed).toMatchObject({
      jobs: expect.arrayContaining([expect.objectContaining({ job: 'J02', will: 'follow' })]) as unknown,
    });
  });

  test('the page of options names the recipe of each size', async () => {
    await json(
      'act',
      'newJob',
      '{"title":"Two kinds","recipe":"H1","sizes":[{"tank":"T07"},{"tank":"T05","recipe":"H3"}]}',
    );
    const { out } = await lw('paper', 'options', '--job', 'J03', '--book', book());
    expect(out).toContain('Built as: Humid planted: T07; Dry-season gecko: T05');
  });

  test.each([
    [['recipe', 'diff', 'H1'], 2],
    [['recipe', 'diff', 'H1', 'H9'], 1],
    [['recipe', 'fork', 'H9'], 1],
    [['recipe', 'take', 'H1'], 1],
    [['recipe', 'send', 'H5', '--lines', 'nothing'], 1],
    [['recipe', 'fork', 'H1', '--season', 'winter'], 2],
  ])('%j is refused', async (words, code) => {
    const told = await lw(...words, '--book', book());
    expect([told.code, told.out, told.err.trim().length > 0]).toEqual([code, '', true]);
  });

  test('is made of answers, with its materials, and works at once', async () => {
    const answers = {
      drainage: '40 mm',
      soil: true,
      mix: [
        { what: 'coir', parts: 2 },
        { what: 'Own loam', parts: 1 },
      ],
    };
    expect(await json('recipe', 'new', 'R1', '--title', 'My own', '--answers', JSON.stringify(answers))).toMatchObject({
      recipe: 'R1',
      title: 'My own',
      needsFigure: expect.arrayContaining([
        { line: 'own_loam_density', label: 'Own loam, dry' },
        { line: 'altitude', label: 'Altitude' },
        { line: 'shelf_rating', label: 'Shelf rating' },
      ]) as unknown,
      materials: [{ label: 'Own loam', unit: 'L' }],
    });
    // 0.4005 m2 x 40 mm.
    expect(await json('bench', '--recipe', 'R1', '--sizes', 'T07', '--lines', 'drainage_placed')).toMatchObject({
      columns: [{ recipe: 'R1', lines: { drainage_placed: { value: expect.closeTo(16.02, 2) as number } } }],
    });
  });
});
