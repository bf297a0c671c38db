import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { escapedSigns, shownSigns } from '#electron/cli/shown-signs.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const { book } = useDemoBook();
const hostile = 'Soil\u001b[31m\u0007 \u009b2J\u202egnp.exe\u0000\r!';

describe('what a book says on a terminal', () => {
  test('acts on nothing: control signs and direction marks are pictures, letters of any tongue stay', () => {
    expect(shownSigns(hostile)).toBe('Soil\u241b[31m\u2407 <009b>2J<202e>gnp.exe\u2400\u240d!');
    expect(shownSigns('Größe 60 × 45 cm, мох, 苔\tend\r\n')).toBe('Größe 60 × 45 cm, мох, 苔\tend\r\n');
  });

  test('as JSON it is still what the book says', () => {
    expect(escapedSigns(JSON.stringify(hostile))).not.toMatch(/\p{Cc}|\p{Cf}/u);
    expect(JSON.parse(escapedSigns(JSON.stringify(hostile)))).toBe(hostile);
  });

  test('a name in the book is printed so by tables, lists and refusals', async () => {
    const record = { id: 'R-x', label: hostile, coins: 100, per: 'h' };
    await lwJson('act', 'put', JSON.stringify({ kind: 'rate', record }), '--book', book()).catch(() => undefined);
    const title = 'Hall \u001b]0;owned\u0007';
    await lwJson(
      'act',
      'put',
      JSON.stringify({ kind: 'rate', record: { ...record, id: 'R-y', label: title } }),
      '--book',
      book(),
    ).catch(() => undefined);
    for (const argv of [['jobs'], ['jobs', '--json'], ['quote', '--job', hostile], [hostile]]) {
      const { out, err } = await lw(...argv, '--book', book());
      expect((out + err).replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e]/u);
    }
  });
});

describe('a refusal with --json', () => {
  test.each([
    ['refused', ['bench', '--sizes', 'T99'], 1],
    ['wrong use', ['bench', '--siezs', 'T03'], 2],
    ['wrong use', ['benhc'], 2],
    ['no book', ['jobs', '--book', '/nowhere/Shop.loamwright'], 3],
  ])('%s: %j is data on standard output, and the sentence beside it', async (kind, argv, code) => {
    const ran = await lw(...argv, '--json', ...(argv.includes('--book') ? [] : ['--book', book()]));
    expect([ran.code, JSON.parse(ran.out)]).toEqual([code, { fault: { kind, says: ran.err.trimEnd() } }]);
  });
});

describe('an option', () => {
  test.each([
    ['--sizes is given twice.', ['bench', '--sizes', 'T03', '--sizes', 'T07']],
    ['Choose one: --json or --csv.', ['bench', '--sizes', 'T03', '--json', '--csv']],
  ])('%s', async (says, argv) => {
    expect(await lw(...argv)).toMatchObject({ code: 2, err: `${says}\n` });
  });

  test('is not what a negative figure is taken for', async () => {
    expect(await lw('work', '-10.7177 %')).toMatchObject({ code: 0, err: '' });
  });
});

const program = fileURLToPath(new URL('../../../electron/cli/run.js', import.meta.url));

describe('an output that cannot be written', () => {
  test.runIf(existsSync('/dev/full'))('a full disk ends with exit 1 and a sentence', () => {
    const ran = spawnSync('sh', ['-c', `"$0" "$1" functions > /dev/full`, process.execPath, program], {
      encoding: 'utf8',
    });
    expect([ran.status, ran.stderr]).toEqual([
      1,
      expect.stringMatching(/^What was to be said could not be written \(/),
    ]);
  });

  test('a reader that has enough is no fault', () => {
    const said = execFileSync('sh', ['-c', '"$0" "$1" functions | head -1', process.execPath, program], {
      encoding: 'utf8',
    });
    expect(said.split('\n')).toHaveLength(2);
  });
});

describe('what is typed for a file as -', () => {
  test.each([
    ['a rule', ['work', '-', '--json'], '2 * 3\n', '"value":6'],
    [
      'what lies in the store',
      ['needs', '--sizes', 'T05', '--stock', '-', '--json'],
      'material,amount,unit\nM01,45,L\n',
      '"onHand":45',
    ],
  ])('%s is read from standard input', (_, argv, input, says) => {
    const ran = spawnSync(process.execPath, [program, ...argv, ...(argv[0] === 'work' ? [] : ['--book', book()])], {
      input,
      encoding: 'utf8',
    });
    expect([ran.status, ran.stderr]).toEqual([0, '']);
    expect(ran.stdout).toContain(says);
  });
});
