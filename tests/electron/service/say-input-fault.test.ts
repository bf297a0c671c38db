import { describe, expect, test } from 'vitest';
import { sayInputFault } from '#electron/service/say-input-fault.ts';
import { channels } from '#shared-calc/contract/channels.ts';

const local = { id: 'V1', job: 'J01', line: 'soil_rise', text: '12 mm', note: '', by: 'us' };

function said(record: Readonly<Record<string, unknown>>, kind = 'localValue'): string | undefined {
  const change = { label: 'soil rise', added: [{ kind, record }], updated: [], removed: [] };
  const data = { opening: 'x', onRevision: 1, change };
  const read = channels['book.apply'].input.safeParse(data);
  return read.success ? undefined : sayInputFault(read.error, data);
}

describe('sayInputFault', () => {
  test('a text that is too long is told with its place, its limit and what to do', () => {
    expect(said({ ...local, note: 'n'.repeat(2_340) })).toBe(
      'The note of the local value V1 has 2,340 letters; 2,000 is the most. Shorten it; nothing was written.',
    );
  });

  test('so is the longer of two texts of a record that changes', () => {
    const change = {
      label: 'note',
      added: [],
      updated: [{ kind: 'localValue', from: local, to: { ...local, note: 'n'.repeat(2_001) } }],
      removed: [],
    };
    const data = { opening: 'x', onRevision: 1, change };
    const read = channels['book.apply'].input.safeParse(data);
    expect(read.success ? '' : sayInputFault(read.error, data)).toBe(
      'The note of the local value V1 has 2,001 letters; 2,000 is the most. Shorten it; nothing was written.',
    );
  });

  test.each([
    ['a count above the most', { count: 1_000 }, 'the count of the size S1 is 1000; 999 is the most'],
    ['a count below the least', { count: 0 }, 'the count of the size S1 is 0; 1 is the least'],
    ['a name that is empty', { tank: '' }, 'the tank of the size S1 is empty'],
    ['a part of a count', { count: 1.5 }, 'the count of the size S1 is not a whole number'],
    ['a figure for words', { label: 7 }, 'the label of the size S1 is not a text'],
    ['a field left out', { label: undefined }, 'the label of the size S1 is missing'],
    ['a field that is unknown', { colour: 'red' }, 'the size S1 has no field called colour'],
  ])('%s', (_, wrong, sentence) => {
    const size = { id: 'S1', job: 'J01', tank: 'T05', order: 1, label: '', count: 1, ...wrong };
    expect(said(size, 'size')).toBe(`This cannot be taken as it stands: ${sentence}. Nothing was done.`);
  });

  test('who asked can only be the client or us', () => {
    expect(said({ ...local, by: 'them' })).toBe(
      'This cannot be taken as it stands: the by of the local value V1 is none of client, us. Nothing was done.',
    );
  });
});
