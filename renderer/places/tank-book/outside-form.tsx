import { useState } from 'preact/hooks';
import type { BookContext, BookHands } from '#renderer/books/book-hands.ts';
import { TextEntry } from '#renderer/books/entry.tsx';
import { updateRecord } from '#renderer/books/put-record.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { unitWords } from '#renderer/text/unit-words.ts';
import { tankMisfit } from '#shared-calc/papers/tank-measures.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { failed } from '#shared-calc/result.ts';
import {
  canBeMeasuredOutside,
  insideFrom,
  nothingOutside,
  outsideFaults,
  withInside,
  type InsideMeasure,
  type InsideSizes,
  type OutsideKey,
  type OutsideTexts,
} from './outside-size.ts';

interface OutsideParts {
  readonly tank: Tank;
  readonly context: BookContext;
  readonly hands: BookHands;
}

const fields: readonly (readonly [key: OutsideKey, label: string])[] = [
  ['length', 'Length outside'],
  ['depth', 'Depth outside'],
  ['height', 'Height outside'],
  ['glass', 'Glass'],
  ['base', 'Base, if thicker'],
  ['seam', 'A seam'],
  ['sideFrame', 'Frame, sides'],
  ['topFrame', 'Frame, height'],
];

/** A tank by its outside size: glass, seams and frame are taken off and shown before anything is taken. */
export function OutsideForm({ tank, context, hands }: OutsideParts) {
  const [texts, setTexts] = useState(nothingOutside);
  if (!canBeMeasuredOutside(tank.shape)) {
    return (
      <p class="hint">
        Measure a {tank.shape} inside, glass to glass: its inside sides do not follow from the outside alone.
      </p>
    );
  }
  const needed: readonly OutsideKey[] =
    tank.shape === 'cylinder' ? ['length', 'height', 'glass'] : ['length', 'depth', 'height', 'glass'];
  const isBegun = needed.every((key) => texts[key].trim() !== '');
  const inside = isBegun ? insideFrom(texts, tank.shape, context.display) : undefined;
  const take = () => {
    if (!inside?.ok) return;
    const refused = takeInside(tank, inside.value, hands);
    if (refused === undefined) setTexts(nothingOutside);
    else hands.refuse(refused);
  };
  return (
    <>
      <OutsideFields shape={tank.shape} texts={texts} write={setTexts} display={context.display} />
      <div class="in-words" aria-live="polite">
        {inside?.ok === true &&
          inside.value.measures.map((measure) => <Measured key={measure.key} measure={measure} />)}
        {inside?.ok === false && <p class="rule-fault">{inside.fault}</p>}
      </div>
      <div class="pair">
        <button class="button" type="button" disabled={inside?.ok !== true} onClick={take}>
          Take these measurements
        </button>
      </div>
    </>
  );
}

function takeInside(tank: Tank, inside: InsideSizes, hands: BookHands): string | undefined {
  const to = withInside(tank, inside);
  const wrong = tankMisfit(to);
  const done =
    wrong === undefined ? updateRecord(`inside size of ${tank.id}`, 'tank', { from: tank, to }) : failed(wrong);
  if (!done.ok) return done.fault;
  hands.apply(done.value);
  return undefined;
}

interface FieldsParts {
  readonly shape: Tank['shape'];
  readonly texts: OutsideTexts;
  readonly write: (texts: OutsideTexts) => void;
  readonly display: Display;
}

function OutsideFields({ shape, texts, write, display }: FieldsParts) {
  const faults = outsideFaults(texts, display);
  const isRound = shape === 'cylinder';
  const unit = unitWords(shownUnit('mm', display), display.currency);
  return (
    <div class="entries">
      {fields
        .filter(([key]) => key !== 'depth' || !isRound)
        .map(([key, label]) => (
          <TextEntry
            key={key}
            label={key === 'length' && isRound ? 'Diameter outside' : label}
            unit={unit}
            figure
            text={texts[key]}
            typing={(text) => write({ ...texts, [key]: text })}
            wrong={faults[key]}
          />
        ))}
    </div>
  );
}

function Measured({ measure: { working, warning } }: { readonly measure: InsideMeasure }) {
  return (
    <p class="put-in">
      {working}
      {warning !== undefined && (
        <span class="flag" data-state="watch">
          <Sign name="watch" />
          {warning}
        </span>
      )}
    </p>
  );
}
