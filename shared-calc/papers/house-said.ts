import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { FromTo, JobEffect } from '#shared-calc/derive/job-effect.ts';
import type { SoldDifference } from '#shared-calc/derive/sold-job.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { textInLabel } from '#shared-calc/recipe/typed-text.ts';
import type { HouseChange, Line } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';

type Written = Pick<HouseChange, 'before' | 'after'> & Partial<Pick<HouseChange, 'recipe' | 'how' | 'of' | 'for'>>;
type Setting = Pick<Derived, 'display' | 'workshop'>;

/** `Litter depth 30 mm -> 20 mm` */
export function changeWords(change: Written, display: Display): string {
  const { before, after } = change;
  const line = after ?? before;
  if (!line) return familyWords(change);
  const words = `${lineLabel(line)} ${textsWords({ ...(before && { before }), ...(after && { after }) }, display)}`;
  const tanks = change.for ? ` for ${change.for.join(', ')}` : '';
  return `${words}${tanks}${change.how === undefined ? '' : `, ${familyWords(change)}`}`;
}

/** `from H1`, `taken from H1`, `sent up to H1` */
function familyWords({ recipe = '', how, of = '', after, before }: Written): string {
  const isOfLine = (after ?? before) !== undefined;
  switch (how) {
    case 'fork':
      return `made from ${of}`;
    case 'join':
      return `made a child of ${of}`;
    case 'take':
      return `taken from ${of}`;
    case 'send':
      return isOfLine ? `sent up from ${of}` : `sent up to ${of}`;
    default:
      return `from ${of === '' ? recipe : of}`;
  }
}

/** The same within a sentence. */
export function changeInSentence(change: Written, display: Display): string {
  return inSentence(changeWords(change, display));
}

/** `30 mm -> 20 mm`; of what is no figure, what it is changed in. */
export function textsWords({ before, after }: Written, display: Display): string {
  const [from, to] = [textOf(before, display), textOf(after, display)];
  return from === to ? `${from}, told otherwise` : `${from} -> ${to}`;
}

function textOf(line: Line | undefined, display: Display): string {
  return line ? textInLabel(line.text, line, display) : 'none';
}

/** `Small oak leaves, dry -35.8 g; cost -1.86, price -3.47` */
export function effectWords(effect: Result<JobEffect, OrderFault>, { display, workshop }: Setting): string {
  if (!effect.ok) return 'not known yet: a figure or a price is missing';
  const { needs, cost, gross } = effect.value;
  const money = (sum: FromTo) => moneyMore(sum, workshop);
  const goods = needs.map(({ label, unit, from, to }) => {
    const amount = goodsWords(Math.abs(to - from), unit, display);
    return `${label} ${to > from ? '+' : '-'}${amount}`;
  });
  if (goods.length === 0 && cost.from === cost.to && gross.from === gross.to) return 'no goods and no price';
  return [...goods, `cost ${money(cost)}, price ${money(gross)}`].join('; ');
}

function moneyMore({ from, to }: FromTo, { coinDecimals }: Setting['workshop']): string {
  return `${to > from ? '+' : ''}${coinsText(to - from, coinDecimals)}`;
}

/** `not in Q-0001A: 2 boxes, +21.40`; empty where all of it is. */
export function differenceWords(quote: string, { words, coins }: SoldDifference, { workshop }: Setting): string {
  if (words === '') return '';
  const more = coins === undefined ? 'price not known yet' : moneyMore({ from: 0, to: coins }, workshop);
  return `not in ${quote}: ${words}, ${more}`;
}
