import type { CheckState } from './bench-types.ts';
import type { FigureFrom, Footing, Unsure } from './rests-on.ts';
import { noSource, sourceFields, type SourceMark, type Sourced } from '#shared-calc/fields/source.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';

/** `from memory` */
export function markWords(mark: SourceMark | undefined): string {
  return sourceFields.source.options?.find(({ value }) => value === mark)?.label ?? noSource;
}

/** `measured by us: 2027-03-10, watch of T07 in J01` */
export function saySource({ source, sourceNote = '' }: Sourced): string {
  const words = source === 'memory' ? 'from memory, to be checked' : markWords(source);
  return sourceNote === '' ? words : `${words}: ${sourceNote}`;
}

const otherFrom = {
  none: noSource,
  local: 'typed for this size',
  job: 'typed for the whole job',
  survey: 'from the survey',
} as const;

/** `from memory`, `typed for this size` */
export function fromWords(from: FigureFrom): string {
  return isMark(from) ? markWords(from) : otherFrom[from];
}

function isMark(from: FigureFrom): from is SourceMark {
  return !(from in otherFrom);
}

/** What nobody has asked, then the figures of a check that nobody can look up; `check` is called by what it is itself. */
export function sayUnsure({ memory, unsaid, notAsked }: Unsure, check: string): readonly string[] {
  const labelOf = ({ line }: Footing) => (line.name === check ? 'its own limit' : lineLabel(line));
  const groups = Map.groupBy([...memory, ...unsaid], ({ from }) => from);
  return [
    ...(notAsked.length === 0 ? [] : [sayNotAsked(notAsked)]),
    ...[...groups].map(([from, some]) => `${capital(fromWords(from))}: ${some.map(labelOf).join('; ')}.`),
  ];
}

/** `Not asked at the place, the house's figure stands: Shelf rating.` */
function sayNotAsked(some: readonly Footing[]): string {
  return `Not asked at the place, the house's figure stands: ${some.map(({ line }) => lineLabel(line)).join('; ')}.`;
}

/** A check that holds on figures of the house that the survey asks for is not passed by them. */
export function checkWords(state: CheckState, { notAsked }: Pick<Unsure, 'notAsked'>): string {
  return state === 'holds' && notAsked.length > 0 ? 'holds, place not asked' : state;
}
