import { insideFrom, nothingOutside, withInside, type OutsideTexts } from '#renderer/books/outside-size.ts';
import { putField } from '#shared-calc/records/edit-field.ts';
import type { FieldContext } from '#shared-calc/records/field-text.ts';
import { tankMisfit } from '#shared-calc/records/misfit.ts';
import { isMeasured, tankMeasures } from '#shared-calc/records/tank-shape.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';

/** A tank that is not in the book yet, as typed. */
export interface NewTankTexts {
  readonly code: string;
  readonly label: string;
  readonly shape: Tank['shape'];
  readonly measured: 'outside' | 'inside';
  readonly outside: OutsideTexts;
  /** Inside measurements; with `outside` only dam, vent and bow are needed. */
  readonly inside: Readonly<Record<string, string>>;
  readonly clientsOwn: boolean;
  readonly price: string;
}

export function emptyTank(code: string): NewTankTexts {
  return {
    code,
    label: '',
    shape: 'rectangle',
    measured: 'outside',
    outside: nothingOutside,
    inside: { frontVentMm: '0' },
    clientsOwn: false,
    price: '',
  };
}

/** Measurements that follow from the outside size are not asked for. */
const fromOutside: readonly string[] = [
  'insideLengthMm',
  'insideDepthMm',
  'insideHeightMm',
  'sideReturnMm',
  'glassMm',
  'baseGlassMm',
];

/** The measurements to ask for a tank of this shape. */
export function typedMeasures(texts: Pick<NewTankTexts, 'shape' | 'measured'>): readonly string[] {
  const outside = isOutside(texts);
  return tankMeasures.filter((key) => isMeasured(texts.shape, key) && !(outside && fromOutside.includes(key)));
}

export function isOutside({ measured }: Pick<NewTankTexts, 'measured'>): boolean {
  return measured === 'outside';
}

/** The tank for the tank book, with the working of its inside size as its note; or what is missing. */
export function readNewTank(texts: NewTankTexts, context: FieldContext): Result<Tank, string> {
  const code = texts.code.trim();
  if (!/^[\p{L}\d][\p{L}\d-]{0,19}$/u.test(code))
    return failed('Give the tank a code of letters and digits, such as T20.');
  const { shape, clientsOwn } = texts;
  const bare: Tank = { id: code, label: texts.label.trim(), shape, clientsOwn, note: '' };
  const measured = isOutside(texts) ? outsideTank(bare, texts, context.display) : ok(bare);
  if (!measured.ok) return measured;
  const tank = withMeasures(measured.value, texts, context);
  if (!tank.ok) return tank;
  const wrong = tankMisfit(tank.value);
  return wrong ? failed(sayFieldFault(wrong)) : tank;
}

function outsideTank(tank: Tank, { outside }: NewTankTexts, display: Display): Result<Tank, string> {
  const inside = insideFrom(outside, tank.shape, display);
  if (!inside.ok) return inside;
  const note = inside.value.measures.map((each) => each.working).join('; ');
  return ok({ ...withInside(tank, inside.value), note: note.replaceAll('\u00a0', ' ') });
}

function withMeasures(tank: Tank, texts: NewTankTexts, context: FieldContext): Result<Tank, string> {
  let next = tank;
  for (const key of typedMeasures(texts)) {
    const read = putField({ kind: 'tank', record: next, key, text: texts.inside[key] ?? '' }, context);
    if (!read.ok) return failed(sayFieldFault(read.fault));
    next = read.value;
  }
  return ok(asDeepAsLong(next));
}

function asDeepAsLong(tank: Tank): Tank {
  const { shape, insideLengthMm, insideDepthMm } = tank;
  if (insideDepthMm !== undefined || insideLengthMm === undefined || isMeasured(shape, 'insideDepthMm')) return tank;
  return { ...tank, insideDepthMm: insideLengthMm };
}
