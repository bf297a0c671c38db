import { SettledField } from '#renderer/kit/field.tsx';
import { figureField } from '#renderer/books/figure-field.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';

/** The narrowest door, stair or lift that the tank is carried through; it is held against each size. */
export function NarrowestEntry({ job, context: { display }, hands }: JobPart) {
  const field = narrowestField(display);
  const settle = (text: string) => {
    const read = field.read(text, job);
    return read.ok
      ? hands.doAct('writeJob', { job: job.id, fields: { narrowestMm: read.value.narrowestMm ?? null } })
      : read.fault;
  };
  return (
    <SettledField
      label={field.title}
      unit={field.unit}
      hint="The narrowest door, stair or lift. Empty while nobody has measured it."
      figure
      text={field.entry(job)}
      settle={settle}
    />
  );
}

/** Entered in the unit that the workshop reads lengths in. */
function narrowestField(display: Display) {
  const measure = { name: 'Narrowest on the way in', stored: 'mm', low: 1, high: 20_000, mayBeEmpty: true };
  return figureField<Job>('narrowestMm', { ...measure, shown: shownUnit('mm', display) }, display);
}
