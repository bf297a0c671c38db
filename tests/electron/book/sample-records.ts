import { hashBody } from '#electron/book/issued.ts';
import { sampleLedger } from './sample-ledger.ts';
import { sampleDone } from './sample-done.ts';
import { sampleFamily, sampleHouseChange } from './sample-family.ts';
import { sampleBatch, sampleKind, samplePlacement } from './sample-animals.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { type Added, type Change, emptyChange } from '#shared-calc/records/change.ts';
import { allKinds } from '#shared-calc/records/records.ts';
import type { IssuedQuote, Job, Records, Supplier, Tank } from '#shared-calc/records/records.ts';

export const today = '2027-03-10';

export function supplierOf(id: string, more: Partial<Supplier> = {}): Supplier {
  return { id, name: `Supplier ${id}`, sells: 'media', leadDays: 3, carriageCoins: 750, note: '', ...more };
}

export function tankOf(id: string, more: Partial<Tank> = {}): Tank {
  return { id, label: `Tank ${id}`, shape: 'rectangle', insideLengthMm: 900, clientsOwn: false, note: '', ...more };
}

export function jobOf(id: string, more: Partial<Job> = {}): Job {
  return {
    id,
    title: `Job ${id}`,
    client: 'School',
    contact: '',
    recipe: 'H1',
    state: 'enquiry',
    site: '',
    access: '',
    audience: '',
    animals: '',
    area: '',
    basis: 'used',
    survey: unasked,
    nextAct: '',
    note: '',
    ...more,
  };
}

export function quoteOf(id: string, number: string, more: Partial<IssuedQuote> = {}): IssuedQuote {
  const body = more.body ?? `what ${number} was worked from`;
  return { id, number, revision: 'A', issuedOn: today, body, sha256: hashBody(body), ...more };
}

export const recipeH1: Added = { kind: 'recipe', record: { id: 'H1', title: 'Humid planted', note: '' } };

export function adding(label: string, ...added: readonly Added[]): Change {
  return { ...emptyChange(label), added };
}

export function removing(label: string, ...removed: readonly Added[]): Change {
  return { ...emptyChange(label), removed };
}

export function changingTank(from: Tank, more: Partial<Tank>): Change {
  return { ...emptyChange(`change ${from.id}`), updated: [{ kind: 'tank', from, to: { ...from, ...more } }] };
}

const priceList = { columns: { price: 'Price' }, articles: { 'H-104': 'M01' }, dates: 'dmy' } as const;

/** One record of every kind, with references to others if it can have any. */
export const oneOfEach: readonly Added[] = [
  {
    kind: 'workshop',
    record: {
      id: 'workshop',
      name: 'Small workshop',
      place: 'Riverside',
      letterhead: '',
      terms: 'As agreed.',
      payment: '',
      currency: 'cr',
      coinDecimals: 2,
      altitudeM: 650,
      unitsShown: { length: 'in' },
      decimalComma: false,
      oldPriceDays: 180,
      openWeekdays: [1, 2, 3, 4, 5],
      depositShare: 0.4,
      depositStepCoins: 500,
      quoteValidDays: 21,
      contingencyShare: 0,
      warrantyShare: 0,
      plantLossShare: 0,
      discountShare: 0,
      priceStepCoins: 0,
      pressureKpa: 103.4,
      electricityPerKwh: 0.315,
      steamWaterL: 3,
      steamPowerKw: 1.5,
      paper: 'Letter',
      weekStart: 'Sunday',
      typed: { altitudeM: '2132.55 ft' },
      plantsFullDays: 45,
    },
  },
  { kind: 'supplier', record: supplierOf('S1', { freeFromCoins: 9000, deliveryWeekdays: [2, 3, 4], priceList }) },
  { kind: 'tank', record: tankOf('T07', { supplier: 'S1', damHeightMm: 150.5, typed: { damHeightMm: '150.5 mm' } }) },
  {
    kind: 'material',
    record: {
      id: 'M01',
      label: 'Expanded clay',
      unit: 'L',
      supplier: 'S1',
      sale: 'packs',
      keeps: true,
      note: '',
      season: { from: '10-01', to: '03-31' },
    },
  },
  {
    kind: 'plant',
    record: {
      id: 'P01',
      name: 'Ficus pumila',
      class: 'climber',
      widthNowCm: 5,
      widthLaterCm: 60,
      lightLow: 2,
      lightHigh: 6,
      dry: false,
      harm: 'milky sap',
      leastFloorM2: 0,
      note: '',
    },
  },
  { kind: 'pack', record: { id: 'M01-10', material: 'M01', amount: 10, supplier: 'S1', article: 'H-104' } },
  { kind: 'pack', record: { id: 'T07-1', material: 'T07', amount: 1, supplier: 'S1' } },
  { kind: 'packPrice', record: { id: 'M01-10@start', pack: 'M01-10', from: '2027-03-01', priceCoins: 980 } },
  {
    kind: 'cultureKind',
    record: {
      id: 'C1',
      label: 'White springtail',
      breeding: 'females only',
      ratePerDay: 0.07,
      tubL: 1.5,
      capacity: 16000,
      harvestShare: 0.5,
      harvestEveryDays: 14,
      yield: 3000,
      firstHarvestDays: 28,
      lowestC: 18,
      highestC: 24,
      founders: 1250,
      foundersNewLine: 3,
      note: '',
      taken: 'floated',
      feedEveryDays: 7,
      q10: 2,
      atC: 21,
      animals: 'springtails',
    },
  },
  sampleKind,
  { kind: 'rate', record: { id: 'R1', label: 'Builder', coins: 3200, per: 'h' } },
  { kind: 'taxClass', record: { id: 'standard', label: 'standard', share: 0.12 } },
  { kind: 'margin', record: { id: 'media', label: 'Media', share: 0.4, taxClass: 'standard', order: 1 } },
  { kind: 'closedDay', record: { id: 'D1', from: '2027-08-02', to: '2027-08-06', label: 'Summer' } },
  recipeH1,
  {
    kind: 'line',
    record: {
      id: 'H1.clay_need',
      recipe: 'H1',
      order: '0001i',
      section: 'Drainage',
      name: 'clay_need',
      role: 'need',
      unit: 'L',
      text: '17 L',
      options: ['one', 'two'],
      note: '',
      low: 0,
      shownFirst: true,
      inset: false,
      material: 'M01',
      group: 'media',
      perJob: false,
      who: 'R1',
    },
  },
  ...sampleFamily,
  {
    kind: 'job',
    record: jobOf('J01', {
      handover: '2027-04-28',
      depositCoins: 65000,
      survey: { ...unasked, underFives: 'no', clearLengthMm: 2480 },
    }),
  },
  {
    kind: 'size',
    record: {
      id: 'J01-T07',
      job: 'J01',
      tank: 'T07',
      order: 1,
      label: '',
      count: 2,
      animalKind: 'A1',
      animals: 4,
      recipe: 'H5',
    },
  },
  {
    kind: 'localValue',
    record: {
      id: 'J01-T07-rise',
      job: 'J01',
      size: 'J01-T07',
      line: 'soil_rise',
      text: '0 mm',
      note: 'flat',
      by: 'client',
    },
  },
  {
    kind: 'packChoice',
    record: { id: 'J01.M01', jobs: ['J01'], material: 'M01', packs: [{ pack: 'M01-10', count: 2 }], supplier: 'S1' },
  },
  { kind: 'issuedQuote', record: quoteOf('Q1', 'Q-0001', { job: 'J01' }) },
  {
    kind: 'quoteLine',
    record: {
      id: 'L1',
      job: 'J01',
      label: 'Step stool',
      group: 'media',
      costCoins: 1200,
      by: 'us',
      size: 'J01-T07',
      supplier: 'S1',
      leadDays: 4,
    },
  },
  {
    kind: 'treatmentBatch',
    record: {
      id: 'B1',
      material: 'M01',
      litres: 12.6,
      way: 'steam',
      aim: 'sterile',
      on: '2027-03-09',
      collectedAt: 'Riverside',
      log: [
        [0, 20],
        [26, 118.5],
      ],
      note: '',
    },
  },
  {
    kind: 'tub',
    record: {
      id: 'U1',
      kind: 'C1',
      startedOn: '2027-03-01',
      claimedBy: 'J01',
      spare: false,
      place: '',
      note: '',
      founders: 1250,
      way: 'split',
      degC: 22,
    },
  },
  ...sampleLedger,
  {
    kind: 'move',
    record: { id: 'M-1', lot: 'U1', of: 'C1', on: '2027-03-08', what: 'used', amount: -500, job: 'J01', note: '' },
  },
  sampleBatch,
  samplePlacement,
  {
    kind: 'actual',
    record: { id: 'A1', job: 'J01', size: 'J01-T07', line: 'soil', value: 33.7, unit: 'L', on: '2027-03-10', note: '' },
  },
  { kind: 'done', record: sampleDone },
  sampleHouseChange,
  {
    kind: 'tableView',
    record: {
      id: 'tank',
      columns: [
        { key: 'label', widthRem: 22 },
        { key: 'note', hidden: true },
      ],
      sort: { column: 'insideHeightMm', down: true },
      filters: [{ column: 'shape', among: ['rectangle'] }],
    },
  },
];

/** The records of a book as plain lists, in their order. */
export function listRecords(records: Records): Readonly<Record<string, readonly unknown[]>> {
  const filled = allKinds.filter((kind) => records[kind].size > 0);
  return Object.fromEntries(filled.map((kind) => [kind, [...records[kind].values()]]));
}

/** Sorts records, so that the order in which they were added does not matter. */
export function sortRecords(records: Records): Readonly<Record<string, readonly unknown[]>> {
  const sorted = allKinds.map(
    (kind) => [kind, [...records[kind]].sort(([one], [other]) => (one < other ? -1 : 1))] as const,
  );
  return Object.fromEntries(sorted.filter(([, list]) => list.length > 0));
}
