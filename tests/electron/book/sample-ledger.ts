import type { Added } from '#shared-calc/records/change.ts';

/** An order of clay that came in part, and what of it is kept. */
export const sampleLedger: readonly Added[] = [
  {
    kind: 'order',
    record: {
      id: 'O-0001',
      supplier: 'S1',
      on: '2027-03-02',
      lines: [
        {
          n: 1,
          of: 'M01',
          label: 'Expanded clay',
          amount: 10,
          unit: 'L',
          count: 2,
          askedCoins: 980,
          due: '2027-03-05',
          for: [{ job: 'J01', amount: 7 }],
        },
      ],
      carriageCoins: 750,
      note: '',
    },
  },
  {
    kind: 'move',
    record: {
      id: 'K-M01',
      lot: 'K-M01',
      of: 'M01',
      on: '2027-03-05',
      what: 'in',
      amount: 10,
      order: 'O-0001',
      line: 1,
      coins: 1000,
      until: '2027-03-06',
      bestBefore: '2028-03-01',
      sealed: true,
      note: 'one bag came',
    },
  },
  {
    kind: 'move',
    record: { id: 'M-2', lot: 'K-M01', of: 'M01', on: '2027-03-05', what: 'kept', amount: 7, job: 'J01', note: '' },
  },
];
