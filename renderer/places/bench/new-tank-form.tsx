import { useState } from 'preact/hooks';
import { ChoiceField, TextField, Fields } from '#renderer/kit/field.tsx';
import { InsideWorked, OutsideFields } from '#renderer/books/outside-fields.tsx';
import { insideFrom, isBegun } from '#renderer/books/outside-size.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { tankShapes } from '#shared-calc/fields/tank.ts';
import { plainOptions } from '#shared-calc/read/read-choice.ts';
import type { FieldContext } from '#shared-calc/records/field-text.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import { typedMeasures, emptyTank, isOutside, readNewTank, type NewTankTexts } from './new-tank.ts';
import css from './bench-place.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface FormParts {
  /** A free code. */
  readonly code: string;
  readonly context: FieldContext;
  /** Saves the tank, or returns why not. */
  readonly take: (tank: Tank, priceCoins: number | undefined) => string | undefined;
}

/**
 * A tank that is not in the book yet: by its outside or inside size, with its own base, or as the client's own tank.
 */
export function NewTankForm({ code, context, take }: FormParts) {
  const { display, workshop } = context;
  const [texts, setTexts] = useState(() => emptyTank(code));
  const [refused, setRefused] = useState<string>();
  const put = (next: Partial<NewTankTexts>) => {
    setTexts({ ...texts, ...next });
    setRefused(undefined);
  };
  const settle = () => {
    const tank = readNewTank(texts, context);
    const price = texts.price.trim() === '' ? ok(undefined) : said(readMoney(texts.price, workshop));
    if (!tank.ok) return setRefused(tank.fault);
    if (!price.ok) return setRefused(price.fault);
    return setRefused(take(tank.value, price.value));
  };
  return (
    <section class={css['newTank']}>
      <h3>A tank that is in no book yet</h3>
      <KindFields texts={texts} put={put} />
      <Measures texts={texts} put={put} display={display} />
      <OwnerFields texts={texts} put={put} currency={workshop.currency} />
      {refused !== undefined && <Fault role="alert">{refused}</Fault>}
      <Buttons>
        <Button onClick={settle}>Enter and take it</Button>
      </Buttons>
    </section>
  );
}

type FieldParts = Pick<MeasureParts, 'texts' | 'put'>;

function KindFields({ texts, put }: FieldParts) {
  return (
    <Fields>
      <TextField label="Code" text={texts.code} typing={(next) => put({ code: next })} />
      <TextField label="Name" text={texts.label} typing={(label) => put({ label })} />
      <ChoiceField
        label="Shape"
        value={texts.shape}
        options={shapes}
        choose={(word) => put({ shape: shapeOf(word) })}
      />
      <ChoiceField
        label="Measured"
        value={isOutside(texts) ? 'outside' : 'inside'}
        options={ways}
        choose={(word) => put({ measured: word === 'inside' ? 'inside' : 'outside' })}
      />
    </Fields>
  );
}

function OwnerFields({ texts, put, currency }: FieldParts & { readonly currency: string }) {
  return (
    <Fields>
      <ChoiceField
        label="Whose it is"
        value={texts.clientsOwn ? 'client' : 'us'}
        options={owners}
        choose={(word) => put({ clientsOwn: word === 'client' })}
      />
      {!texts.clientsOwn && (
        <TextField
          label="Price, if known"
          unit={currency}
          figure
          text={texts.price}
          typing={(price) => put({ price })}
        />
      )}
    </Fields>
  );
}

const shapes = plainOptions(tankShapes);
const ways = [
  { value: 'outside', label: 'outside' },
  { value: 'inside', label: 'inside, glass to glass' },
];
const owners = [
  { value: 'us', label: 'we buy it' },
  { value: 'client', label: "the client's own" },
];

function shapeOf(word: string): Tank['shape'] {
  return tankShapes.find((shape) => shape === word) ?? 'rectangle';
}

interface MeasureParts {
  readonly texts: NewTankTexts;
  readonly put: (next: Partial<NewTankTexts>) => void;
  readonly display: Display;
}

function Measures({ texts, put, display }: MeasureParts) {
  const { shape, outside } = texts;
  const unit = shownUnitWords('mm', display);
  const isOut = isOutside(texts);
  const inside = isOut && isBegun(outside, shape) ? insideFrom(outside, shape, display) : undefined;
  return (
    <>
      <Fields>
        {isOut && (
          <OutsideFields shape={shape} texts={outside} write={(next) => put({ outside: next })} display={display} />
        )}
        {typedMeasures(texts).map((key) => (
          <TextField
            key={key}
            label={calledOf('tank', key)}
            unit={unit}
            figure
            text={texts.inside[key] ?? ''}
            typing={(text) => put({ inside: { ...texts.inside, [key]: text } })}
          />
        ))}
      </Fields>
      <InsideWorked inside={inside} />
    </>
  );
}
