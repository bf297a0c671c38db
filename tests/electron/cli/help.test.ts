import { describe, expect, test } from 'vitest';
import { commands } from '#electron/cli/commands.ts';
import { optionWords } from '#electron/cli/option-words.ts';
import { lw, lwJson } from './run-cli.ts';

describe('help', () => {
  test('every option of every command has words, and a value where it takes one', () => {
    const without = [...commands.values()].flatMap(({ name, options }) =>
      Object.entries(options).flatMap(([option, kind]) => {
        const words = optionWords(name, option);
        return words && (kind === 'flag') === (words.as === undefined) ? [] : [`${name} --${option}`];
      }),
    );
    expect(without).toEqual([]);
  });

  test('a command is told with its options, the same as by --help', async () => {
    const told = await lw('help', 'job', 'copy');
    expect(told).toEqual({
      code: 0,
      out: [
        'job copy J01: a new enquiry with the sizes and local values of another job',
        '  --book FILE  the book; your own if left out',
        '  --json       gives one JSON value in place of a table',
        '',
      ].join('\n'),
      err: '',
    });
    expect(await lw('job', 'copy', '--help')).toEqual(told);
  });

  test('a word is told, a place by its name, a function of the function book', async () => {
    expect((await lw('help', 'landed')).out).toBe(
      'landed: What goods cost once they are here: the price of the packs with carriage.\n',
    );
    expect((await lw('help', 'size', 'bench')).out).toMatch(/^Size bench\n\nThe sizes of the open job side by side/);
    expect((await lw('help', 'layer_volume')).out).toMatch(/^Layer volume: layer_volume\(area, depth\)/);
  });

  test('a command goes before a topic of the same name, which follows', async () => {
    const { out } = await lw('help', 'today');
    expect(out.startsWith('today [--on DATE]')).toBe(true);
    expect(out).toContain('\n\nToday\n\nWhat is to be done over all jobs');
  });

  test('what is neither is refused, with what is near', async () => {
    expect(await lw('help', 'liter')).toEqual({
      code: 2,
      out: '',
      err: 'No command or topic liter. Did you mean litter? help lists them.\n',
    });
  });

  test('all of it as one JSON value', async () => {
    expect(await lwJson('help')).toMatchObject({
      commands: expect.arrayContaining([expect.objectContaining({ name: 'work' })]) as unknown,
      topics: expect.arrayContaining([{ id: 'dam', is: 'word', title: 'dam' }]) as unknown,
    });
    expect(await lwJson('help', 'store')).toMatchObject({
      topic: { id: 'store', is: 'place', acts: [{ act: 'Put in' }, { act: 'Keep for a job' }, { act: 'Count it' }] },
    });
  });
});

describe('--version', () => {
  test('is the version of the package', async () => {
    expect((await lw('--version')).out).toBe('0.1.0\n');
    expect(await lwJson('--version')).toEqual({ version: '0.1.0' });
  });
});
