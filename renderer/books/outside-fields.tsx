import { TextField } from '#renderer/kit/field.tsx';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { outsideFaults, outsideFields, type InsideSizes, type OutsideTexts } from './outside-size.ts';
import { PutIn } from '#renderer/kit/put-in.tsx';
import css from './outside-fields.module.css';

interface FieldsParts {
  readonly shape: Tank['shape'];
  readonly texts: OutsideTexts;
  readonly write: (texts: OutsideTexts) => void;
  readonly display: Display;
}

/** The outside measurements of a shape. */
export function OutsideFields({ shape, texts, write, display }: FieldsParts) {
  const faults = outsideFaults(texts, display);
  const unit = shownUnitWords('mm', display);
  return (
    <>
      {outsideFields(shape).map(([key, label]) => (
        <TextField
          key={key}
          label={label}
          unit={unit}
          figure
          text={texts[key]}
          typing={(text) => write({ ...texts, [key]: text })}
          wrong={faults[key]}
        />
      ))}
    </>
  );
}

/** The inside size after panes, seams and frame, with its working, or why there is none. */
export function InsideWorked({ inside }: { readonly inside: Result<InsideSizes, string> | undefined }) {
  return (
    <div class={css['inside']} aria-live="polite">
      {inside?.ok === true &&
        inside.value.measures.map(({ key, working, warning }) => (
          <PutIn key={key}>
            {working}
            {warning !== undefined && (
              <Flag state="watch" sign="watch">
                {warning}
              </Flag>
            )}
          </PutIn>
        ))}
      {inside?.ok === false && <Fault>{inside.fault}</Fault>}
    </div>
  );
}
