import { tankShapes } from '#shared-calc/fields/tank.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { measureField, ownField, wordsField, yesNoField } from './import-field.ts';
import { findSupplier, importRecords, type ImportField, type RecordImport } from './import-records.ts';
import { readChoice } from './read-choice.ts';
import { isMeasured, tankMeasures, tankMisfit } from './tank-measures.ts';

/**
 * Reads a list of tanks: rows of code, shape and inside measurements in mm, or with their unit (`12 in`). Besides:
 * label, dam, front vent, glass, base, bow, return, supplier, own, note.
 */
export function importTanks(text: string, records: Records): RecordImport {
  const { decimalComma } = workshopOf(records);
  return importRecords(text, {
    kind: 'tank',
    many: 'tanks',
    code: 'code',
    find: (code) => records.tank.get(code),
    needed: ['shape', 'length', 'height'],
    blank: (code) => ({ id: code, label: code, shape: 'rectangle', clientsOwn: false, note: '' }),
    fields: tankFields(records, decimalComma),
    lacks: (tank) => takenCode(tank, records) ?? lackOf(tank),
  });
}

function tankFields(records: Records, decimalComma: boolean): readonly ImportField<Tank>[] {
  const shapes = tankShapes.map((shape) => ({ value: shape, label: shape }));
  return [
    wordsField<Tank>('label', 'label'),
    ownField<Tank, string>('shape', (text) => readChoice(text, 'Shape', shapes), withShape),
    ...tankMeasures.map((measure) => measureField<Tank>(measure.heading, measure.key, measure, decimalComma)),
    ownField<Tank, string>(
      'supplier',
      (text) => findSupplier(text, records),
      (tank, supplier) => ({ ...tank, supplier }),
    ),
    yesNoField<Tank>('own', 'clientsOwn'),
    wordsField<Tank>('note', 'note'),
  ];
}

function withShape(tank: Tank, word: string): Tank {
  const shape = tankShapes.find((each) => each === word);
  return shape === undefined ? tank : { ...tank, shape };
}

/** A tank's code and a material's share the price book, so none may stand for both. */
function takenCode({ id }: Tank, records: Records): string | undefined {
  return records.material.has(id) ? 'that is the code of a material.' : undefined;
}

function lackOf(tank: Tank): string | undefined {
  const foreign = tankMeasures.find(
    ({ key }) => !isMeasured(tank.shape, key) && (tank[key] ?? 0) > 0 && key !== 'insideDepthMm',
  );
  if (foreign) return `a ${tank.shape} has no ${foreign.name.toLowerCase()}.`;
  return tankMisfit(tank);
}
