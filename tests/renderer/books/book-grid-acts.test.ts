import { describe, expect, test } from 'vitest';
import { bookGridActs } from '#renderer/books/book-grid-acts.ts';
import { signal } from '@preact/signals';
import { viewActs } from '#renderer/books/view-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { bookModel } from '#renderer/books/book-model.ts';
import { gridIndex, movedSelection, type CellText } from '#renderer/grid/grid-model.ts';
import { cellsIn, fillPlan, pastePlan, type PlannedText } from '#renderer/grid/paste-plan.ts';
import { rectOf, single, type Selection } from '#renderer/grid/selection.ts';
import { tankTable } from '#renderer/places/tank-book/tank-rows.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const model = bookModel(tankTable, derive(demoRecords(), demoDay));
const index = gridIndex(model);
const at = (row: number, column: number) => ({ row, column });
const selection: Selection = { anchor: at(0, 3), tip: at(1, 5) };

/** The texts that a book writes for what its grid asks, and the rows it has chosen. */
function grid() {
  const written: CellText[] = [];
  let rows: readonly string[] = [];
  const acts = bookGridActs(
    {
      write: (texts) => {
        written.push(...texts);
        return undefined;
      },
      refuse: () => undefined,
      choose: (chosen) => (rows = chosen),
      add: () => undefined,
      remove: () => undefined,
      rowActs: () => [],
      view: viewActs({
        api: { derived: signal(derive(demoRecords(), demoDay)), doAct: () => undefined },
        table: tankTable,
        askFilter: () => undefined,
      }),
    },
    () => model,
  );
  return { acts, written, rows: () => rows };
}

const keyed = (plan: readonly PlannedText[]) =>
  plan.flatMap(({ text, ...cell }) => {
    const key = index.keyOf(cell);
    return key ? [{ ...key, text }] : [];
  });

function filled(chosen: Selection, to: 'right' | 'down'): readonly CellText[] {
  const { acts, written } = grid();
  const textOf = (cell: { readonly row: number; readonly column: number }) => {
    const key = index.keyOf(cell);
    return key ? model.copied(key) : '';
  };
  acts.write(keyed(fillPlan(rectOf(chosen), { to, fromBeside: false, textOf })), 'fill');
  return written;
}

function pasted(chosen: Selection, block: readonly (readonly string[])[]): readonly CellText[] {
  const { acts, written } = grid();
  acts.write(keyed(pastePlan(block, rectOf(chosen), index.extent).texts), 'paste');
  return written;
}

describe('bookGridActs', () => {
  test('one text pasted fills the range, what stays the same left out', () => {
    expect(pasted(selection, [['300']])).toEqual([
      { row: 'T02', column: 'insideLengthMm', text: '300' },
      { row: 'T02', column: 'insideDepthMm', text: '300' },
      { row: 'T02', column: 'insideHeightMm', text: '300' },
    ]);
  });

  test('a pasted block goes down and right and ends with the book', () => {
    expect(pasted(single(at(model.rows.length - 1, 3)), [['410'], ['420']])).toEqual([
      { row: 'T12', column: 'insideLengthMm', text: '410' },
    ]);
  });

  test('what is typed over a range goes into each of its fields that is written in', () => {
    const { acts, written } = grid();
    const cells = cellsIn({ top: 0, bottom: 1, left: 0, right: 1 }).flatMap((cell) => index.keyOf(cell) ?? []);
    acts.write(
      cells.map((cell) => ({ ...cell, text: 'Show tank' })),
      'typed over',
    );
    expect(written).toEqual([
      { row: 'T01', column: 'label', text: 'Show tank' },
      { row: 'T02', column: 'label', text: 'Show tank' },
    ]);
  });

  test('a code pasted over is asked for, so that it is refused by its name', () => {
    expect(pasted(single(at(0, 0)), [['T70']])).toEqual([{ row: 'T01', column: 'id', text: 'T70' }]);
  });

  test('filled right, the first field of each line goes into those at its right', () => {
    expect(filled(selection, 'right')).toEqual([{ row: 'T02', column: 'insideHeightMm', text: '295' }]);
  });

  test('filled down, the first line goes into those below it; codes and what stays as it is are left alone', () => {
    expect(filled({ anchor: at(0, 0), tip: at(1, 4) }, 'down')).toEqual([
      { row: 'T02', column: 'label', text: 'Rectangle 300 × 300 × 300' },
      { row: 'T02', column: 'insideLengthMm', text: '300' },
      { row: 'T02', column: 'insideDepthMm', text: '300' },
    ]);
  });

  test('only what is written in and not empty is emptied', () => {
    const { acts, written } = grid();
    acts.clear(cellsIn({ top: 0, bottom: 0, left: 0, right: 2 }).flatMap((cell) => index.keyOf(cell) ?? []));
    expect(written).toEqual([
      { row: 'T01', column: 'label', text: '' },
      { row: 'T01', column: 'shape', text: '' },
    ]);
  });

  test('the rows of a selection are chosen, the one of its tip first', () => {
    const { acts, rows } = grid();
    acts.chosen(selection, index);
    expect(rows()).toEqual(['T02', 'T01']);
  });

  test('the rows of several ranges are chosen, each once', () => {
    const { acts, rows } = grid();
    acts.chosen({ ...single(at(4, 2)), others: [rectOf(selection), rectOf(single(at(4, 3)))] }, index);
    expect(rows()).toEqual(['T05', 'T01', 'T02']);
  });
});

describe('bookModel', () => {
  test('a field is copied as it would be written', () => {
    const rect = rectOf(selection);
    const texts = cellsIn(rect)
      .flatMap((cell) => index.keyOf(cell) ?? [])
      .map(model.copied);
    expect(texts).toEqual(['300', '300', '300', '295', '295', '445']);
  });

  test('a field is read out with its row and its figure with the unit', () => {
    const said = model.columns.map(({ key }) => model.shownAt({ row: 'T01', column: key }).spoken);
    expect([said[3], said[6], said[13], said[16]]).toEqual([
      'Length, T01, 300 mm',
      'Bow, T01, empty',
      'Price, T01, 46.00 cr',
      'Note, T01, empty',
    ]);
  });

  test('what is not written in says why it does not open', () => {
    const code = model.entryAt({ row: 'T01', column: 'id' });
    expect([code, model.entryAt({ row: 'T99', column: 'id' })]).toEqual([
      { closed: 'A code stays as it is, for others go by it. Copy the row to have it under another code.' },
      undefined,
    ]);
  });
});

describe('movedSelection', () => {
  test('a selection stays on its fields when rows come before it, and is lost with the field of its tip', () => {
    const fewer = gridIndex({ ...model, rows: model.rows.slice(1) });
    const none = gridIndex({ ...model, rows: model.rows.slice(2) });
    expect([
      movedSelection(selection, index, index),
      movedSelection(selection, index, fewer),
      movedSelection(selection, index, none),
    ]).toEqual([selection, single(at(0, 5)), undefined]);
  });
});
