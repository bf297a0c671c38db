import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { saidUnit } from './goods-said.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

type FrozenNeed = QuoteBody['needs'][number];

/**
 * What stands behind a line of a quote, in a client's words: what its group is made of, in the order of the needs.
 * A line written for the job alone says it by its name.
 */
export function whatItIs(
  body: QuoteBody,
  { group, label }: { readonly group: string; readonly label: string },
): string {
  if (!body.margins.some((margin) => margin.id === group && margin.label === label)) return '';
  if (group === WORK_GROUP) return 'Survey, quote, build, carrying and handover';
  const needs = body.needs.filter((need) => need.group === group);
  return needs.map((need) => sayNeed(need, body)).join('; ');
}

const decimals: Readonly<Record<string, number>> = { L: 1, g: 0, kg: 1, m: 2, m2: 2, each: 0, km: 0 };

function sayNeed({ used, unit, label }: FrozenNeed, { workshop }: QuoteBody): string {
  const amount = writeNumber(used, decimals[unit] ?? 2, workshop);
  // The van's kilometres say what they are by themselves.
  if (unit === 'km') return `${amount} ${unit}`;
  const name = label.charAt(0).toLowerCase() + label.slice(1);
  return unit === 'each' ? `${amount} × ${name}` : `${amount} ${saidUnit(unit)} ${name}`;
}
