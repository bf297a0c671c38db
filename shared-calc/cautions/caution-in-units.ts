import { sayFigures } from '#shared-calc/quantity/said-figures.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { cautionEntry, type CautionId } from './all-cautions.ts';

interface Said {
  /** None for a sentence that is not of the table; its figures are in the workshop's units from the start. */
  readonly id?: CautionId | null;
  readonly says: string;
}

/** A caution with the figures that the table marks in the workshop's units. Names and words filled in stay. */
export function cautionInUnits<C extends Said>(caution: C, display: Display): C {
  const { id, says } = caution;
  if (id === undefined || id === null) return caution;
  const { says: wording, anyTank = wording } = cautionEntry(id);
  return { ...caution, says: inUnits(says, wording, display) ?? inUnits(says, anyTank, display) ?? says };
}

/** None where the sentence was not made from this wording. */
function inUnits(says: string, wording: string, display: Display): string | undefined {
  const parts = wording.split(/(\[[^\]]*\]|\{\w+\})/);
  const [, ...found] = new RegExp(`^${parts.map((part) => `(${patternOf(part)})`).join('')}$`).exec(says) ?? [];
  if (found.length === 0) return undefined;
  return found.map((words, at) => (parts[at]?.startsWith('[') ? sayFigures(words, display) : words)).join('');
}

function patternOf(part: string): string {
  if (part.includes('{')) return '.+?';
  return part.replaceAll(/[[\]]/g, '').replaceAll(/[$()*+.?\\^{|}]/g, String.raw`\$&`);
}
