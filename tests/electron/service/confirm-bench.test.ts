import { describe, expect, test } from 'vitest';

import { workedJob } from '#tests/worked-job.ts';

import { ask, jobOf, recordsOf, refused, serviceAtHand, standing, today } from './service-at-hand.ts';

describe('confirmBench', () => {
  test('a job of one size comes to the same here as in the quote of the whole job', () => {
    const at = serviceAtHand();
    const size = { id: 'J80-T05', job: 'J80', tank: 'T05', order: 1, label: '', count: 1 };
    const added = [
      { kind: 'job', record: { ...jobOf(at), id: 'J80' } } as const,
      { kind: 'size', record: size } as const,
    ];
    ask(at, 'book.apply', { ...standing(at), change: { label: 'job J80', added, updated: [], removed: [] } });
    const whole = workedJob(recordsOf(at), jobOf(at, 'J80'), today).sums();
    const quote = whole.ok ? whole.value.quote : undefined;

    expect(ask(at, 'bench.confirm', { job: 'J80' })).toEqual({
      revision: 2,
      columns: [
        {
          column: 'T05',
          sums: {
            costCoins: quote?.costCoins,
            netCoins: quote?.netCoins,
            grossCoins: quote?.grossCoins,
            depositCoins: quote?.depositCoins,
            hours: quote?.hours,
          },
        },
      ],
    });
  });

  test('a size without a figure has no sums, and says why', () => {
    const at = serviceAtHand();
    const record = { id: 'V9', job: 'J01', line: 'freeboard', text: '', note: '', by: 'us' } as const;
    const change = {
      label: 'no freeboard',
      added: [{ kind: 'localValue', record } as const],
      updated: [],
      removed: [],
    };
    ask(at, 'book.apply', { ...standing(at), change });
    const { columns } = ask(at, 'bench.confirm', { job: 'J01' });

    expect(columns.map(({ sums }) => sums)).toEqual(columns.map(() => undefined));
    expect(columns[0]?.fault).toBe('Not known yet: T03, lip clearance.');
  });

  test('a job that is not there sends the page back to the book', () => {
    expect(refused(serviceAtHand(), 'bench.confirm', { job: 'J77' })).toEqual({
      says: 'There is no job J77.',
      readAgain: true,
    });
  });
});
