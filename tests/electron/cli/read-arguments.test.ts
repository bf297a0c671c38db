import { describe, expect, test } from 'vitest';
import { readArguments } from '#electron/cli/read-arguments.ts';

const table = { sizes: 'text', set: 'texts', json: 'flag', materials: 'text' } as const;

function read(...argv: readonly string[]) {
  const given = readArguments(argv, table);
  if (!given.ok) return given.fault;
  const { value } = given;
  return { words: value.words, json: value.flag('json'), sizes: value.text('sizes'), set: value.texts('set') };
}

describe('readArguments', () => {
  test('words, options with = or a blank, and options given more than once', () => {
    expect(read('T07', '--sizes=T03,T07', '--set', 'litter=20 mm', '--json', '--set', 'T07.kit=show')).toEqual({
      words: ['T07'],
      json: true,
      sizes: 'T03,T07',
      set: ['litter=20 mm', 'T07.kit=show'],
    });
  });

  test('what is not given is not there', () => {
    expect(read()).toEqual({ words: [], json: false, sizes: undefined, set: [] });
  });

  test('an empty value is a value: a figure that is missing', () => {
    expect(read('--set', 'litter=', '--sizes=')).toMatchObject({ set: ['litter='], sizes: '' });
  });

  test('a rule that starts with a minus is not an option', () => {
    expect(read('--set=capping=-5 mm')).toMatchObject({ set: ['capping=-5 mm'] });
    expect(read('-2 ^ 2', '--json')).toMatchObject({ words: ['-2 ^ 2'], json: true });
    expect(read('T07', '-(3 degC)', '--set', '-5 mm')).toMatchObject({ words: ['T07', '-(3 degC)'], set: ['-5 mm'] });
  });

  test.each([
    [['--seizes', 'T07'], 'Unknown option --seizes. Did you mean --sizes?'],
    [['--material', 'M01'], 'Unknown option --material. Did you mean --materials?'],
    [['--qwertz'], 'Unknown option --qwertz.'],
    [['-x'], 'Unknown option -x.'],
    [['--sizes'], '--sizes needs a value.'],
    [['--set'], '--set needs a value.'],
    [['--json=yes'], '--json takes no value.'],
  ])('%j: %s', (argv, says) => {
    expect(read(...argv)).toBe(says);
  });
});
