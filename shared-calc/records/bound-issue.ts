import type { z } from 'zod';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Field } from '#shared-calc/fields/field.ts';
import type { KindName } from '#shared-calc/fields/kind-names.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import { survey } from '#shared-calc/fields/survey.ts';

/** A figure of a record that is out of its bounds, in the words of its field. */
interface BoundIssue {
  /** `Narrowest on the way in` */
  readonly called: string;
  /** `99999 mm is more than 20000 mm` */
  readonly says: string;
}

/** How a figure misses its bound; nothing for any other issue. */
export function boundIssue(issue: z.core.$ZodIssue, field: Field | undefined, given: unknown): BoundIssue | undefined {
  if (!field || typeof given !== 'number') return undefined;
  const told = (figure: number) => withUnit(figure, field.unit);
  const called = field.called ?? field.heading;
  if (issue.code === 'too_big') return { called, says: `${told(given)} is more than ${told(Number(issue.maximum))}` };
  if (issue.code === 'too_small') return { called, says: `${told(given)} is less than ${told(Number(issue.minimum))}` };
  return undefined;
}

/** The field that a path in a record leads to; those of a survey lie a step deeper. */
export function fieldIn(kind: KindName, path: readonly PropertyKey[]): Field | undefined {
  const key = String(path.at(-1));
  if (path.length === 1) return fieldOf(kind, key);
  return path.length === 2 && path[0] === 'survey' ? surveyFields.get(key) : undefined;
}

const surveyFields: ReadonlyMap<string, Field> = new Map(Object.entries<Field>(survey));

function withUnit(figure: number, unit = 'number'): string {
  if (unit === 'share') return `${cleanNoise(figure * 100)} %`;
  return ['each', 'number'].includes(unit) ? `${figure}` : `${figure} ${unit}`;
}
