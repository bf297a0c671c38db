import type { Bridge } from '#renderer/bridge.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { BookInfo, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ChangeSchema } from '#shared-calc/records/change-schema.ts';
import { RecordListsSchema, fromRecordLists, toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { applyChange, invertChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { z } from 'zod';

const Book = z.strictObject({ today: z.string(), lists: RecordListsSchema });

type Answers = { readonly [C in Channel]?: (input: unknown) => Result<unknown, Refusal> };

/** A book that exists only in this page, behind the page's own bridge. */
export function standInService(data: unknown): Bridge {
  const { today, lists } = Book.parse(data);
  let records: Records = fromRecordLists(lists);
  const done: Change[] = [];
  const undone: Change[] = [];
  let revision = 1;
  const info = (): BookInfo => ({
    opening: 'stand-in',
    name: 'Withy Street.loamwright',
    path: '/books/Withy Street.loamwright',
    revision,
    savedAt: '2027-03-15T14:02:00Z',
    ...(done.length > 0 && { undo: done.at(-1)?.label }),
    ...(undone.length > 0 && { redo: undone.at(-1)?.label }),
    notices: [],
    today,
  });
  const put = (change: Change) => {
    records = applyChange(records, change);
    revision += 1;
  };
  const answers: Answers = {
    'book.read': () => ok({ info: info(), records: toRecordLists(records) }),
    'book.info': () => ok(info()),
    'book.since': () => ok({ info: info(), entries: [] }),
    'book.apply': (input) => {
      const { change } = z.looseObject({ change: ChangeSchema }).parse(input);
      put(change);
      done.push(change);
      undone.length = 0;
      return ok({ info: info(), others: [] });
    },
    'book.undo': () => {
      const last = done.pop();
      if (last) undone.push(last);
      if (last) put(invertChange(last));
      return ok({ info: info(), others: [], ...(last && { change: invertChange(last) }) });
    },
    ...fileAnswers(info),
  };
  return {
    call: <C extends Channel>(channel: C, input: unknown) => {
      const answer = answers[channel]?.(input) ?? refuse(`Nothing answers ${channel} here.`);
      return Promise.resolve(answer as Result<Output<C>, Refusal>);
    },
    desktop: undefined,
    onChanged: () => () => undefined,
  };
}

/** File channels only echo their input. */
function fileAnswers(info: () => BookInfo): Answers {
  return {
    'file.recent': () =>
      ok({
        books: [
          { id: 'a', name: 'Withy Street', folder: '/books', open: true },
          { id: 'b', name: 'Other', folder: '/books', open: false },
        ],
      }),
    'file.open': () => refuse('There is no book at /books/none.loamwright.'),
    'file.new': () => refuse('/books/Withy Street.loamwright is there already.'),
    'file.backups': () => ok({ backups: [{ file: 'day-2027-03-14', day: '2027-03-14', bytes: 220_000 }] }),
    'file.previewBackup': () =>
      ok({ differences: [{ kind: 'packPrice', added: 1, changed: 2, removed: 0 }], kept: ['issued quote Q-0001A'] }),
    'file.restore': () => ok({ info: info(), others: [] }),
  };
}

function refuse(says: string): Result<never, Refusal> {
  return failed({ says, readAgain: false });
}
