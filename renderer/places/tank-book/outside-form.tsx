import { useState } from 'preact/hooks';
import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { tankMisfit } from '#shared-calc/records/misfit.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { InsideWorked, OutsideFields } from '#renderer/books/outside-fields.tsx';
import { insideFrom, isBegun, nothingOutside, withInside, type InsideSizes } from '#renderer/books/outside-size.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fields } from '#renderer/kit/field.tsx';

interface OutsideParts {
  readonly tank: Tank;
  readonly context: BookContext;
  readonly api: BookApi;
  readonly go: (column: string) => void;
}

/** A tank by its outside size: subtracts glass, seams and frame, and shows the working before anything is saved. */
export function OutsideForm({ tank, context: { display }, api, go }: OutsideParts) {
  const [texts, setTexts] = useState(nothingOutside);
  const inside = isBegun(texts, tank.shape) ? insideFrom(texts, tank.shape, display) : undefined;
  const take = () => {
    if (!inside?.ok) return;
    const refused = takeInside(tank, inside.value, api);
    if (refused !== undefined) {
      api.refuse(refused);
      return;
    }
    setTexts(nothingOutside);
    // What is typed next is the dam, which no outside size gives; the button has lost the keyboard.
    go('damHeightMm');
  };
  return (
    <>
      <Fields>
        <OutsideFields shape={tank.shape} texts={texts} write={setTexts} display={display} />
      </Fields>
      <InsideWorked inside={inside} />
      <Buttons>
        <Button disabled={inside?.ok !== true} onClick={take}>
          Use these measurements
        </Button>
      </Buttons>
    </>
  );
}

function takeInside(tank: Tank, inside: InsideSizes, api: BookApi): string | undefined {
  const to = withInside(tank, inside);
  const wrong = tankMisfit(to);
  return wrong ? sayFieldFault(wrong) : api.doAct('put', { kind: 'tank', record: to });
}
