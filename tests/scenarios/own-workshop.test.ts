import { describe, expect, test } from 'vitest';
import { houseRecords } from '#electron/book/own-book.ts';
import { readDemo } from '#electron/book/read-demo.ts';
import { runAct } from '#shared-calc/acts/act.ts';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import { startList } from '#shared-calc/derive/start-list.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { quoteDocument } from '#shared-calc/papers/quote-paper.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { freshRecord, putField } from '#shared-calc/records/edit-field.ts';
import { emptyRecords, type RecordKind, type RecordOf } from '#shared-calc/records/records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** A new book with the house recipes, and how many fields were written or chosen in it so far. */
interface Walk {
  readonly derived: Derived;
  readonly entries: number;
}

function begin(): Walk {
  const added = houseRecords(valueOf(readDemo(DEMO_DAY)), { guesses: false });
  return { derived: derive(applyChange(emptyRecords, { ...emptyChange(''), added }), DEMO_DAY), entries: 0 };
}

function act({ derived, entries }: Walk, name: string, input: unknown, writes: number): Walk {
  const found = allActs.find((each) => each.name === name);
  if (!found) throw new Error(`no act ${name}`);
  const change = valueOf(runAct(found, derived, input));
  return { derived: derived.update(applyChange(derived.records, change)), entries: entries + writes };
}

/** Fields of a record as a person types them, each an entry. */
function typed<K extends RecordKind>(
  walk: Walk,
  kind: K,
  record: RecordOf<K>,
  texts: Readonly<Record<string, string>>,
) {
  const { derived } = walk;
  let written = record;
  for (const [key, text] of Object.entries(texts))
    written = valueOf(putField({ kind, record: written, key, text }, derived));
  return act(walk, 'put', { kind, record: written }, Object.keys(texts).length);
}

interface Country {
  readonly currency: string;
  readonly units: string;
  readonly dates: string;
  readonly paper: string;
  readonly tank: Readonly<Record<string, string>>;
  readonly wage: string;
  readonly overhead: string;
  /** Of each thing that is bought, in whole coins. */
  readonly priceCoins: number;
}

function quoted({ currency, units, dates, paper, tank, wage, overhead, priceCoins }: Country): Walk {
  let walk = begin();
  const shop = (texts: Readonly<Record<string, string>>) => typed(walk, 'workshop', walk.derived.workshop, texts);
  walk = shop({ units, dateOrder: dates, paper });
  walk = act(walk, 'chooseCurrency', { currency }, 1);
  walk = typed(walk, 'taxClass', { id: 'standard', label: 'standard' }, { share: '8' });
  for (const [id, coins] of [
    ['R-builder', wage],
    ['R-overhead', overhead],
  ] as const) {
    const rate = walk.derived.records.rate.get(id);
    if (rate) walk = typed(walk, 'rate', rate, { coins });
  }
  // One margin for all groups is one entry.
  const margins = walk.derived.rules.margins.map((margin) => ({ kind: 'margin', record: { ...margin, share: 0.35 } }));
  walk = act(walk, 'putAll', { records: margins }, 1);
  walk = shop({
    name: 'Fern & Glass',
    terms: 'Half now, the rest at the handover.',
    quoteValidDays: '30',
    depositShare: '50',
    contingencyShare: '0',
    warrantyShare: '2',
    plantLossShare: '0',
  });
  walk = typed(walk, 'tank', freshRecord('tank', 'T01', { frontBowMm: 0, sideReturnMm: 0, frontVentMm: 0 }), tank);
  for (const [id, name] of [
    ['S01', 'Glass and Lamps'],
    ['S02', 'Media and Leaves'],
  ] as const) {
    const texts = { name, leadDays: '3', carriageCoins: '0' };
    walk = typed(walk, 'supplier', freshRecord('supplier', id), texts);
  }
  walk = act(walk, 'newJob', { title: 'Hallway', recipe: 'H4', sizes: [{ tank: 'T01' }] }, 3);
  const missing = startList(walk.derived).find(({ id }) => id === 'prices')?.missing ?? [];
  for (const [at, { of: material }] of missing.entries()) {
    const { pack } = walk.derived.records;
    const amount = [...pack.values()].find((each) => each.material === material)?.amount ?? 1;
    walk = act(walk, 'putPrice', { material, amount, supplier: at % 2 ? 'S01' : 'S02', priceCoins }, 2);
  }
  return walk;
}

const usa: Country = {
  currency: 'USD',
  units: 'us',
  dates: 'mdy',
  paper: 'Letter',
  tank: {
    label: 'Hall tank',
    insideLengthMm: '24 in',
    insideDepthMm: '18 in',
    insideHeightMm: '1 ft 6 in',
    damHeightMm: '5 1/2 in',
    glassMm: '1/4 in',
    baseGlassMm: '1/4 in',
  },
  wage: '38',
  overhead: '12.50',
  priceCoins: 1_400,
};

const japan: Country = {
  currency: 'JPY',
  units: 'metric',
  dates: 'ymd',
  paper: 'A4',
  tank: {
    label: 'Genkan',
    insideLengthMm: '600',
    insideDepthMm: '450',
    insideHeightMm: '450',
    damHeightMm: '140',
    glassMm: '6',
    baseGlassMm: '6',
  },
  wage: '3,200',
  overhead: '900',
  priceCoins: 1_500,
};

function draftOf(derived: Derived) {
  const job = derived.job('J01');
  if (!job) throw new Error('no job');
  return valueOf(draftQuote(derived, job));
}

describe('a first quote of one’s own, from the house recipes', () => {
  test.each([
    { where: 'US units and dollars', country: usa, decimals: 2 },
    { where: 'a currency without coins', country: japan, decimals: 0 },
  ])('takes at most 60 entries in $where, and nothing is missing then', ({ country, decimals }) => {
    const { derived, entries } = quoted(country);
    const draft = draftOf(derived);

    expect(startList(derived)).toEqual([]);
    expect(draft.lacks).toEqual([]);
    expect(entries).toBeLessThanOrEqual(60);
    expect(draft.body.workshop).toMatchObject({ currency: country.currency, coinDecimals: decimals });
    expect(coinsText(draft.body.sums.grossCoins, decimals)).toMatch(decimals === 0 ? /^\d+$/ : /^\d+\.\d\d$/);
  });

  test('promises nothing for plants until the workshop does', () => {
    const walk = quoted(usa);
    const terms = ({ derived }: Walk) => {
      const model = quoteModel(draftOf(derived).body);
      return JSON.stringify(quoteDocument(model, displayOf(derived.workshop))).match(/Plants that die[^"]*|undefined/g);
    };

    expect(terms(walk)).toBeNull();
    expect(terms(typed(walk, 'workshop', walk.derived.workshop, { plantsBasicDays: '21' }))).toEqual([
      'Plants that die within 21 days are replaced once.',
    ]);
  });

  test('before a figure is given the list asks for all of it, in the order of what unblocks most', () => {
    const open = startList(begin().derived).filter(({ state }) => state === 'open');
    expect(open.map(({ id, needs }) => [id, needs])).toEqual([
      ['units', 3],
      ['currency', 1],
      ['tax', 1],
      ['people', 2],
      ['margins', 10],
      ['terms', 7],
      ['tank', 1],
      ['job', 1],
      ['supplier', 1],
      ['prices', 1],
      ['measures', 1],
    ]);
  });

  test('it comes back by its reason: a price that a later job lacks', () => {
    let walk = quoted(usa);
    walk = act(walk, 'newJob', { title: 'Library', recipe: 'H1', sizes: [{ tank: 'T01' }] }, 0);
    const { records } = walk.derived;
    const quote = {
      id: 'Q-0001A',
      job: 'J01',
      number: 'Q-0001',
      revision: 'A',
      issuedOn: DEMO_DAY,
      body: '',
      sha256: '',
    };
    const issued = { ...records, issuedQuote: new Map([[quote.id, quote]]) };
    const [first, ...others] = startList(walk.derived.update(issued));

    expect(others).toEqual([]);
    expect([first?.id, first?.state]).toEqual(['prices', 'open']);
    expect(first?.missing.map(({ label }) => label)).toContain('Coir, as hydrated litres');
  });
});
