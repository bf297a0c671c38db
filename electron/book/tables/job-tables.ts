import type { Tables } from './table.ts';

/** What the house does: recipes, jobs, the store, quotes, the back room. */
export const jobTables = {
  recipe: {
    columns: { id: 'text', title: 'text', note: 'text' },
    refers: {},
    once: [],
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
    refers: { recipe: ['recipe'], group: ['margin'] },
    once: [['recipe', 'name']],
    onceGiven: [['recipe', 'use']],
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
    refers: { recipe: ['recipe'] },
    once: [],
  },
  size: {
    columns: { id: 'text', job: 'text', tank: 'text', order: 'real', label: 'text', count: 'integer' },
    refers: { job: ['job'], tank: ['tank'] },
    once: [],
  },
  localValue: {
    columns: { id: 'text', job: 'text', size: 'text?', line: 'text', text: 'text', note: 'text', by: 'text' },
    refers: { job: ['job'], size: ['size'] },
    once: [['job', 'size', 'line']],
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
    refers: { material: ['material', 'tank'], reservedFor: ['job'] },
    once: [],
  },
  packChoice: {
    columns: { id: 'text', jobs: 'json', material: 'text', packs: 'json' },
    // A choice whose goods have left the book is passed over: it must not keep them there.
    refers: {},
    once: [],
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
    refers: { job: ['job'] },
    once: [['number', 'revision']],
  },
  quoteLine: {
    columns: { id: 'text', job: 'text', label: 'text', group: 'text', costCoins: 'integer', by: 'text' },
    refers: { job: ['job'], group: ['margin'] },
    once: [],
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
    refers: { material: ['material'] },
    once: [],
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
    refers: { kind: ['cultureKind'], claimedBy: ['job'] },
    once: [],
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
    refers: { job: ['job'], size: ['size'] },
    once: [],
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
