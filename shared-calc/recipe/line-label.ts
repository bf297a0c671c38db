import type { Line } from '#shared-calc/records/records.ts';
import { capital } from '#shared-calc/rule/capital.ts';

/** A line's label, or its name in words. */
export function lineLabel({ label, name }: Pick<Line, 'label' | 'name'>): string {
  return label ?? capital(name.replaceAll('_', ' '));
}

/** A label inside a sentence: `air gap under the mesh`; `H1` or `T5 lamps` keep their capitals. */
export function inSentence(label: string): string {
  return /^\p{Lu}(?:\p{Lu}|\d)/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}
