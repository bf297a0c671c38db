import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { quoteRules, type QuoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Rate, Recipe, Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { changesOf } from './house-changes.ts';
import { byId } from '#shared-calc/records/by-id.ts';
import { ratesOf } from './frozen-rates.ts';
import { frozenHouses } from './quote-body.ts';
import type { SoldHouse } from './sold-house.ts';

/** What a quote is frozen from beside its lines and prices. */
export interface WorkingHouse {
  /** The usual one. */
  readonly recipe: Recipe;
  /** Of a size that has another. */
  readonly recipeOf: (recipe: string) => Recipe;
  readonly workshop: Workshop;
  readonly rates: readonly Rate[];
  /** Ids of the house changes that its lines have. */
  readonly changes: readonly string[];
}

/** The recipe and the workshop of an order as they are now, with the recipes that its sizes are worked from. */
export function houseNow(
  records: Pick<Records, 'recipe' | 'rate' | 'workshop' | 'houseChange'>,
  recipe: string,
  sizes: Iterable<string> = [recipe],
): WorkingHouse {
  const recipeOf = (id: string) => records.recipe.get(id) ?? { id, title: id, note: '' };
  const changes = [...new Set(sizes)].flatMap((each) => changesOf(records, each));
  return {
    recipe: recipeOf(recipe),
    recipeOf,
    workshop: workshopOf(records),
    rates: [...records.rate.values()],
    changes: changes.flatMap(({ id, inForceOn }) => (inForceOn === undefined ? [] : [id])),
  };
}

/** The house of a sold job: its shares, rates and recipe as sold, its name and address as they are now. */
export function houseAsSold(
  { body, taken }: SoldHouse,
  now: Workshop,
  recipeNow: (recipe: string) => Recipe,
): WorkingHouse {
  const sold = byId(frozenHouses(body).map(({ recipe }) => recipe));
  const { depositShare, depositStepCoins, contingencyShare, warrantyShare } = body.workshop;
  const { plantLossShare, discountShare, priceStepCoins } = body.workshop;
  const shares = { depositShare, depositStepCoins, contingencyShare, warrantyShare };
  return {
    recipe: body.recipe,
    recipeOf: (recipe) => sold.get(recipe) ?? recipeNow(recipe),
    workshop: { ...now, ...shares, plantLossShare, discountShare, priceStepCoins },
    rates: body.rates,
    changes: [...(body.changes ?? []), ...taken.map(({ id }) => id)],
  };
}

/** Goods at the prices of the quote; what it did not know, such as another tank, at those of today. */
export function pricesAsSold({ body }: SoldHouse, now: PriceBook): PriceBook {
  const frozen = new Map(body.goods.map((goods) => [goods.material, goods]));
  return {
    on: body.pricesOn,
    goods: new Map([...now.goods, ...frozen]),
    suppliers: new Map([...now.suppliers, ...byId(body.suppliers)]),
  };
}

/** Goods as they are bought today; what is no longer in the book, as it was sold. */
export function pricesToBuy({ goods, suppliers }: PriceBook, now: PriceBook): PriceBook {
  return {
    on: now.on,
    goods: new Map([...goods, ...now.goods]),
    suppliers: new Map([...suppliers, ...now.suppliers]),
  };
}

/** Margins, tax classes and rates of the quote; what it did not know is as it is now. */
export function rulesAsSold({ body }: SoldHouse, now: Pick<Records, 'margin' | 'taxClass' | 'rate'>): QuoteRules {
  const { margin, taxClass, rate } = ratesOf(body);
  return quoteRules(body.workshop, {
    margin: new Map([...now.margin, ...margin]),
    taxClass: new Map([...now.taxClass, ...taxClass]),
    rate: new Map([...now.rate, ...rate]),
  });
}
