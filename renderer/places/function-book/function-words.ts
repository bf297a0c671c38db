import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Titles of the groups, in the order of the book. */
const groupTitles: Readonly<Record<TradeFunction['group'], string>> = {
  geometry: 'Geometry',
  media: 'Media',
  leaves: 'Leaves',
  water: 'Water',
  heat: 'Heat treatment',
  cultures: 'Cultures',
  'air and light': 'Air, glass and light',
  mass: 'Weight',
  buying: 'Buying',
  price: 'Price',
  dates: 'Dates',
};

export interface FunctionGroup {
  readonly title: string;
  readonly functions: readonly TradeFunction[];
}

/** Every function of the book under its heading. */
export function functionGroups(): readonly FunctionGroup[] {
  const groups = Map.groupBy(tradeFunctions, ({ group }) => group);
  return Object.entries(groupTitles).flatMap(([group, title]) => {
    const functions = [...groups].find(([each]) => each === group)?.[1] ?? [];
    return functions.length === 0 ? [] : [{ title, functions }];
  });
}

/** A function by its name in any case, by its title, or by a word of either. */
export function findFunction(words: string): TradeFunction | undefined {
  const wanted = words.trim().toLowerCase();
  const inRule = wanted.replaceAll(' ', '_');
  return (
    tradeFunctions.find(({ name, title }) => [name.toLowerCase(), title.toLowerCase()].includes(wanted)) ??
    tradeFunctions.find(
      ({ name, title }) => name.toLowerCase().includes(inRule) || title.toLowerCase().includes(wanted),
    )
  );
}

export interface ArgumentWords {
  readonly kind: string;
  readonly unit: string;
  readonly range: string;
  readonly meaning: string;
}

/** An argument as the book's table shows it. */
export function argumentWords(argument: Argument): ArgumentWords {
  const { takes, otherwise, says = '' } = argument;
  const range = [rangeWords(argument), otherwise === undefined ? '' : `${otherwise} where left out`];
  return {
    kind: kindWords(takes),
    unit: typeof takes === 'string' && takes !== 'any' ? unitWords(shownTakes(takes), 'money') : '',
    range: range.filter((part) => part !== '').join(', '),
    meaning: typeof takes === 'string' ? says : [says, takes.join(', ')].filter((part) => part !== '').join(': '),
  };
}

/** The usual range of an argument; a share in %. */
function rangeWords({ takes, low, high }: Argument): string {
  if (typeof takes !== 'string' || low === undefined || high === undefined) return '';
  const share = takes === 'share';
  const say = (bound: number) => String(share ? cleanNoise(bound * 100) : bound);
  const unit = share ? ' %' : unitBehind(takes);
  return `${say(low)} to ${say(high)}${unit}`;
}

/** The unit of the result: "L", "a plain number". */
export function givesWords(gives: TradeFunction['gives']): string {
  if (typeof gives !== 'string') return 'gives what its figures lead to';
  const unit = unitWords(gives, 'money');
  return unit === '' ? `gives ${sayKind(kindOfUnit(gives)).replace('_', ' or ')}` : `gives ${unit}`;
}

function kindWords(takes: Argument['takes']): string {
  if (typeof takes !== 'string') return 'choice';
  return takes === 'any' ? 'any one kind' : sayKind(kindOfUnit(takes)).replace('yes_no', 'yes or no');
}

function shownTakes(takes: string): string {
  return takes === 'share' ? '%' : takes;
}

function unitBehind(takes: string): string {
  const unit = unitWords(takes, 'money');
  return unit === '' || unit === 'each' ? '' : ` ${unit}`;
}
