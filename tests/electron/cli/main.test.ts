import { existsSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames, commands } from '#electron/cli/commands.ts';
import { lw, lwJson, lwProcess, useDemoBook } from './run-cli.ts';

const { book, folder } = useDemoBook();

describe('main', () => {
  test.each([
    [['bnch'], 'No command bnch. Did you mean bench?'],
    [
      ['book'],
      'Say which: book new, book check, book export, book backups, book restore, book recover, book import-prices.',
    ],
    [['book', 'chek'], 'No command book chek. Did you mean book check?'],
    [['bench', '--seizes', 'T07'], 'Unknown option --seizes. Did you mean --sizes?'],
    [['bench', '--sizes'], '--sizes needs a value.'],
    [['bench'], 'Say which sizes: --sizes T03,T07x2, or --job J01.'],
    [['needs', '--sizes', 'T07', '--job', 'J01'], 'Give --job or --sizes, not both.'],
    [['needs', 'T07'], 'What is T07 for? Sizes are given as --sizes T03,T07x2.'],
    [['work'], 'Give one rule in quotes: work "layer_volume(0.4 m2, 40 mm)".'],
    [['work', '1', '+', '2'], 'Give one rule in quotes: work "layer_volume(0.4 m2, 40 mm)".'],
    [['functions', 'layer_volume', 'mix_part'], 'Name one function: functions layer_volume.'],
    [['book', 'export'], 'Name one file: book export copy.loamwright'],
    [['book', 'import-prices'], 'Name one file: book import-prices prices.csv'],
    [['book', 'check', 'demo'], 'What is demo for? Another book is named by --book.'],
  ])('%j is wrong use: %s', async (argv, says) => {
    expect(await lw(...argv)).toEqual({
      code: 2,
      out: '',
      err: `${says}
`,
    });
  });

  test('with no command, or one that is near none, all are named', async () => {
    const all = commandNames.join(', ');
    expect(await lw()).toEqual({
      code: 2,
      out: '',
      err: `Say what to do: ${all}.
`,
    });
    expect(await lw('aquascape')).toEqual({
      code: 2,
      out: '',
      err: `No command aquascape. There are: ${all}.
`,
    });
  });

  test('wrong use opens no book, and makes none', async () => {
    const file = path.join(folder(), 'none.loamwright');
    await lw('bench', '--book', file);
    await lw('needs', 'T07', '--book', file);
    expect((await lw('book', 'check', '--book', file)).code).toBe(3);
  });

  test('help tells each command in a line', async () => {
    const { code, out, err } = await lw('--help');
    expect([code, err]).toEqual([0, '']);
    const lines = out.trimEnd().split('\n');
    expect(lines.slice(0, commandNames.length)).toEqual([...commands.values()].map((command) => command.usage));
    expect([...commands.values()].filter(({ name, usage }) => !usage.startsWith(name))).toEqual([]);
  });

  test.each(commandNames)('%s --help tells how it is called, and does nothing', async (name) => {
    const { code, out } = await lw(...name.split(' '), '--help');
    const [usage, ...options] = out.trimEnd().split('\n');
    expect([code, usage]).toEqual([0, commands.get(name)?.usage]);
    expect(options.at(-1)).toMatch(/^ {2}--json +gives one JSON value/);
  });

  test.each([
    ['bench --sizes T07'],
    ['needs --sizes T07'],
    ['run --sizes T07'],
    ['quote --sizes T07'],
    ['changed Q-0001A Q-0001B'],
    ['jobs'],
    ['job set J01 kit=show'],
    ['prepare --sizes T07'],
    ['treat --leaves 5 --way steam --aim clean'],
    ['cultures --jobs J01'],
    ['book check'],
    ['book export copy.loamwright'],
    ['book import-prices prices.csv'],
    ['start --no-browser'],
  ])('%s refuses a book that is not there, and makes none', async (line) => {
    const none = path.join(folder(), 'missing.loamwright');
    expect(await lw(...line.split(' '), '--book', none)).toEqual({
      code: 3,
      out: '',
      err: `There is no book at ${none}. To make one: book new ${none} --start plain\n`,
    });
    expect(existsSync(none)).toBe(false);
  });

  test('book new makes the small demo workshop, and never over a file that is there', async () => {
    const fresh = path.join(folder(), 'fresh.loamwright');
    expect(await lw('book', 'new', fresh, '--start', 'plain')).toEqual({ code: 0, out: `Made: ${fresh}\n`, err: '' });
    const [made, demo] = [await lwJson('jobs', '--book', fresh), await lwJson('jobs', '--book', book())];
    expect(made).toEqual(demo);
    expect(await lw('book', 'new', fresh, '--start', 'plain')).toEqual({
      code: 1,
      out: '',
      err: `${fresh} is there already.\n`,
    });
  });

  test.each([
    [['shop.loamwright'], 'Say what it begins with: --start full|plain|house|empty.'],
    [['shop.loamwright', '--start', 'huge'], '--start huge: it takes full|plain|house|empty.'],
    [['shop.loamwright', '--start', 'empty', '--guesses'], '--guesses goes with --start house alone.'],
    [['--start', 'plain'], 'Name one file: book new shop.loamwright --start plain'],
  ])('book new %j is told what it lacks', async (argv, says) => {
    expect(await lw('book', 'new', ...argv)).toEqual({ code: 2, out: '', err: `${says}\n` });
  });
});

describe('the program as a process', () => {
  test('answers on standard output: exit 0', () => {
    const { code, out, err } = lwProcess(
      'bench',
      '--sizes',
      'T07',
      '--lines',
      'soil_front',
      '--set',
      'soil_rise=0 mm',
      '--json',
      '--book',
      book(),
    );
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ columns: [{ lines: { soil_front: { value: 90, unit: 'mm' } } }] });
  });

  test('refuses on standard error: exit 1', () => {
    expect(lwProcess('work', '3 L + 2 mm')).toEqual({
      code: 1,
      out: '',
      err: 'Litres plus millimetres cannot be added. In 3 L + 2 mm, both sides must be of one kind. (at 1)\n',
    });
  });

  test('wrong use is exit 2, a book that cannot be opened exit 3', () => {
    const none = path.join(folder(), 'nowhere.loamwright');
    expect([lwProcess('bnch').code, lwProcess('book', 'check', '--book', none).code]).toEqual([2, 3]);
  });
});
