import { unitCalled } from '#shared-calc/quantity/unit-spellings.ts';
import { unitSymbols } from '#shared-calc/quantity/unit.ts';
import { nearestName } from './nearest.ts';

/** Words that may mean a unit, but may mean another thing too. */
const likely: Readonly<Record<string, string>> = { c: 'degC', f: 'degF', degrees: 'degC', y: 'yr' };

/** The unit most likely meant by an unknown one after a number. */
export function nearUnit(word: string): string | undefined {
  return unitCalled(word) ?? likely[word.toLowerCase()] ?? nearestName(word, unitSymbols);
}
