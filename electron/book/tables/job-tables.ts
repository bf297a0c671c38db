import type { Tables } from './table.ts';

/** What the house does: recipes, jobs, the store, quotes, the back room. */
export const jobTables = {
  recipe: {
    columns: { id: 'text', title: 'text', note: 'text' },
  },
  line: {
    columns: {
      id: 'text',
      recipe: 'text',
      order: 'text',
      section: 'text',
      name: 'text',
      label: 'text?',
      role: 'text',
      unit: 'text',
      text: 'text',
      options: 'json?',
      note: 'text',
      low: 'real?',
      high: 'real?',
      shownFirst: 'yes no',
      inset: 'yes no',
      material: 'text?',
      group: 'text?',
      task: 'text?',
      perJob: 'yes no',
      level: 'text?',
      says: 'text?',
      decides: 'text?',
      caution: 'text?',
      use: 'text?',
      as: 'json?',
      place: 'text?',
      part: 'text?',
      cures: 'json?',
    },
  },
  job: {
    columns: {
      id: 'text',
      title: 'text',
      client: 'text',
      contact: 'text',
      recipe: 'text',
      state: 'text',
      site: 'text',
      access: 'text',
      audience: 'text',
      animals: 'text',
      area: 'text',
      enquiredOn: 'text?',
      handover: 'text?',
      depositCoins: 'integer?',
      depositOn: 'text?',
      basis: 'text',
      nextAct: 'text',
      nextOn: 'text?',
      note: 'text',
      narrowestMm: 'real?',
    },
  },
  size: {
    columns: { id: 'text', job: 'text', tank: 'text', order: 'real', label: 'text', count: 'integer' },
  },
  localValue: {
    columns: { id: 'text', job: 'text', size: 'text?', line: 'text', text: 'text', note: 'text', by: 'text' },
  },
  stockEntry: {
    columns: {
      id: 'text',
      material: 'text',
      amount: 'real',
      sealed: 'yes no',
      reservedFor: 'text?',
      bestBefore: 'text?',
      quarantineUntil: 'text?',
      note: 'text',
    },
  },
  packChoice: {
    columns: { id: 'text', jobs: 'json', material: 'text', packs: 'json' },
  },
  issuedQuote: {
    columns: {
      id: 'text',
      job: 'text?',
      number: 'text',
      revision: 'text',
      issuedOn: 'text',
      body: 'text',
      sha256: 'text',
    },
  },
  quoteLine: {
    columns: { id: 'text', job: 'text', label: 'text', group: 'text', costCoins: 'integer', by: 'text' },
  },
  treatmentBatch: {
    columns: {
      id: 'text',
      material: 'text',
      litres: 'real',
      way: 'text',
      aim: 'text',
      on: 'text',
      collectedAt: 'text',
      log: 'json',
      note: 'text',
    },
  },
  tub: {
    columns: {
      id: 'text',
      kind: 'text',
      startedOn: 'text',
      claimedBy: 'text?',
      spare: 'yes no',
      place: 'text',
      note: 'text',
    },
  },
  actual: {
    columns: {
      id: 'text',
      job: 'text',
      size: 'text?',
      line: 'text',
      value: 'real',
      unit: 'text',
      on: 'text',
      note: 'text',
    },
  },
} as const satisfies Pick<
  Tables,
  | 'recipe'
  | 'line'
  | 'job'
  | 'size'
  | 'localValue'
  | 'stockEntry'
  | 'packChoice'
  | 'issuedQuote'
  | 'quoteLine'
  | 'treatmentBatch'
  | 'tub'
  | 'actual'
>;
