import { withoutPlace } from '#shared-calc/recipe/without-place.ts';
import type { Added } from '#shared-calc/records/change.ts';
import type { Margin, RecordKind, Workshop } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';

export interface OwnTerms {
  /** The demo's prices come along, each marked as a guess. */
  readonly guesses: boolean;
}

/** What the demo workshop knows of its trade, without what it asks, pays, promises, owns or stands in. */
export function houseRecords(demo: readonly Added[], { guesses }: OwnTerms): readonly Added[] {
  const tanks = new Set(demo.flatMap((each) => (each.kind === 'tank' ? each.record.id : [])));
  const packs = new Set(
    demo.flatMap((each) => (each.kind === 'pack' && !tanks.has(each.record.material) ? each.record.id : [])),
  );
  return demo.flatMap((each) => {
    if (each.kind === 'pack') return packs.has(each.record.id) ? { ...each, record: unsold(each.record) } : [];
    if (each.kind === 'packPrice')
      return guesses && packs.has(each.record.pack) ? { ...each, record: { ...each.record, guess: true } } : [];
    return catalogue.has(each.kind) ? ungiven(each) : skeletonOf(each);
  });
}

const catalogue: ReadonlySet<RecordKind> = new Set([
  'material',
  'plant',
  'cultureKind',
  'animalKind',
  'recipe',
  'line',
]);

/** Only the workshop, whose hours are charged, and the groups of a quote: all without a figure. */
export function emptyRecords(demo: readonly Added[]): readonly Added[] {
  return demo.flatMap(skeletonOf);
}

/** One tax class for all groups: which of them a reduced tax is on, the law of the place says. */
const TAX = { id: 'standard', label: 'standard' };

function skeletonOf(each: Added): readonly Added[] {
  switch (each.kind) {
    case 'workshop':
      return [{ ...each, record: ownWorkshop(each.record) }];
    case 'rate':
      return [{ ...each, record: withoutUndefined({ ...each.record, coins: undefined, ...noSource }) }];
    case 'margin':
      return [{ ...each, record: withoutUndefined<Margin>({ ...each.record, share: undefined, taxClass: TAX.id }) }];
    case 'taxClass':
      return each.record.id === TAX.id ? [{ ...each, record: TAX }] : [];
    default:
      return [];
  }
}

const noSource = { source: undefined, sourceNote: undefined };

function ownWorkshop({ id, coinDecimals, oldPriceDays, openWeekdays }: Workshop): Workshop {
  return {
    id,
    name: '',
    place: '',
    letterhead: '',
    terms: '',
    payment: '',
    currency: '',
    coinDecimals,
    unitsShown: {},
    decimalComma: false,
    oldPriceDays,
    openWeekdays,
    discountShare: 0,
    priceStepCoins: 0,
  };
}

function ungiven(each: Added): Added {
  if (each.kind === 'material') return { ...each, record: unsold(each.record) };
  return each.kind === 'line' ? { ...each, record: withoutPlace(each.record) } : each;
}

function unsold<R extends { readonly supplier?: string | undefined }>(record: R): R {
  return withoutUndefined({ ...record, supplier: undefined });
}
