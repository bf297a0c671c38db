import type { Added } from '#shared-calc/records/change.ts';

/** A recipe that differs from its parent for one tank. */
export const sampleFamily: readonly Added[] = [
  {
    kind: 'recipe',
    record: {
      id: 'H5',
      title: 'Humid planted, dry season',
      note: '',
      parent: 'H1',
      animalKind: 'A1',
      tanks: ['T07'],
      season: { from: '05-01', to: '09-30' },
    },
  },
  {
    kind: 'difference',
    record: {
      id: 'H5.clay_need@T07',
      recipe: 'H5',
      line: 'H5.clay_need',
      what: 'changed',
      fields: { text: '12 L', low: null },
      was: { text: '17 L', low: 0 },
      for: ['T07'],
    },
  },
];

export const sampleHouseChange: Added = {
  kind: 'houseChange',
  record: {
    id: 'HC-0001',
    recipe: 'H1',
    on: '2027-03-10',
    after: {
      id: 'H1.pad',
      recipe: 'H1',
      order: '9',
      section: 'Base',
      name: 'pad',
      role: 'given',
      unit: 'mm',
      text: '3 mm',
      note: '',
      shownFirst: false,
      inset: false,
      perJob: false,
    },
    note: 'Try a pad under the drainage',
    fromJob: 'J01',
    answers: [{ job: 'J01', answer: 'leave', on: '2027-03-10', by: 'R1' }],
    how: 'send',
    of: 'H5',
    by: 'R1',
    for: ['T07'],
  },
};
