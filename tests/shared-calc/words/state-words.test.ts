import { describe, expect, test } from 'vitest';
import { stateWords } from '#shared-calc/words/state-words.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

interface Written {
  readonly job?: Readonly<Record<string, string>>;
  readonly locals?: Readonly<Record<string, string>>;
}

function words(line: string, { job = {}, locals = {} }: Written = {}): readonly string[] {
  return stateWords(demoBench({ sizes: ['T07'], job, locals: { T07: locals } }, records).box('T07', line));
}

describe('stateWords', () => {
  test.each<[string, string, Written, readonly string[]]>([
    ['the house says nothing', 'litter', {}, []],
    ['nor does the tank book', 'dam_height', {}, []],
    ['a figure of the whole job', 'litter', { job: { litter: '20 mm' } }, ['whole job']],
    ['a local figure', 'litter', { locals: { litter: '20 mm' } }, ['local']],
    ['a local rule', 'litter', { locals: { litter: 'drainage / 2' } }, ['local rule']],
    ['a figure out of range', 'litter', { locals: { litter: '500 mm' } }, ['local', 'out of range']],
    ['a missing figure', 'litter', { job: { litter: '' } }, ['needs a figure']],
    ['what waits on it', 'leaves_need', { job: { litter: '' } }, ['waits on litter']],
    ['a function without an answer', 'lamps', { job: { light_hours: '0 h/d' } }, ['no answer']],
    ['a cycle', 'drainage', { job: { drainage: 'capping', capping: 'drainage' } }, ['depends on itself']],
    [
      'what waits on a cycle',
      'drainage_placed',
      { job: { drainage: 'capping', capping: 'drainage' } },
      ['waits on drainage'],
    ],
  ])('%s', (_, line, written, said) => {
    expect(words(line, written)).toEqual(said);
  });
});
