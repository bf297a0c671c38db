import { describe, expect, onTestFinished, test } from 'vitest';
import { z } from 'zod';
import { editsOf } from '#electron/book/edit.ts';
import { openFile } from '#electron/book/open-file.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { faultOf, newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, oneOfEach, supplierOf, today } from '#tests/electron/book/sample-records.ts';

/** A book whose file cannot grow, as on a full disk. */
function bookWithoutRoom() {
  const { path, close } = newBook(adding('begin', ...oneOfEach));
  close();
  const file = valueOf(openFile(path, { today, backups: false }));
  onTestFinished(file.connection.close);
  const { db } = file.connection;
  const pages = z.int().parse(db.pragma('page_count', { simple: true }));
  const giveRoom = (more: number) => db.pragma(`max_page_count = ${pages + more}`);
  giveRoom(0);
  return { path, file, giveRoom, edits: editsOf(file.state, () => today) };
}

const large = (id: string): Change =>
  adding(id, { kind: 'supplier', record: supplierOf(id, { note: 'x'.repeat(2_000) }) });
const many: Change = {
  ...large('many'),
  added: Array.from({ length: 20 }, (_, nth) => large(`S${nth + 10}`).added).flat(),
};

const shortened: Change = {
  ...adding('shortened'),
  updated: many.added.flatMap((each) =>
    each.kind === 'supplier' ? [{ kind: 'supplier', from: each.record, to: { ...each.record, note: '' } }] : [],
  ),
};

describe('a full disk', () => {
  test('an edit that finds no room is refused whole, and the book reads on as it was', () => {
    const { file, edits, path } = bookWithoutRoom();
    const before = valueOf(file.state.present());

    expect(faultOf(edits.apply(many, 1))).toEqual({ kind: 'no-room' });
    expect(valueOf(file.state.present())).toEqual(before);
    expect(file.connection.db.inTransaction).toBe(false);
    const other = reopen(path);
    expect(other.check()).toMatchObject({ value: { sound: true, revision: 1 } });
  });

  test('the same edit is taken once there is room again, and is there after closing', () => {
    const { file, edits, giveRoom, path } = bookWithoutRoom();
    const refused = faultOf(edits.apply(many, 1));
    giveRoom(1_000);

    expect([refused, valueOf(edits.apply(many, 1)).revision]).toEqual([{ kind: 'no-room' }, 2]);
    file.connection.close();
    expect(reopen(path).records().supplier.size).toBe(21);
  });

  test('undo that finds no room is refused too, and can still be done later', () => {
    const { file, edits, giveRoom } = bookWithoutRoom();
    giveRoom(1_000);
    valueOf(edits.apply(many, 1));
    valueOf(edits.apply(shortened, 2));
    const full = z.int().parse(file.connection.db.pragma('page_count', { simple: true }));
    file.connection.db.pragma(`max_page_count = ${full}`);
    const refused = faultOf(edits.undo());
    giveRoom(1_000);

    expect([refused, valueOf(edits.undo())]).toEqual([{ kind: 'no-room' }, { revision: 4, label: 'shortened' }]);
  });
});
