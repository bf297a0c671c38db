import { freeId } from '#shared-calc/jobs/find-job.ts';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import { MOST_BUILDS } from '#shared-calc/jobs/read-sizes.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import type { LocalValue, Records, Size, Tank } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Puts a tank of the tank book beside the recipe, at the end of the bench. */
export function takeTank(records: Records, job: string, tank: string): Result<Change, string> {
  const known = records.tank.get(tank);
  if (!known) return failed(`No tank called ${tank} in the tank book.`);
  const sizes = sizesOf(records, job);
  const again = sizes.some((size) => size.tank === tank);
  const size = newSize(records, job, { tank, order: (sizes.at(-1)?.order ?? 0) + 1 });
  const locals = known.clientsOwn ? ownTank(records, size) : [];
  return ok(
    diffRecords(again ? `${tank} taken again` : `${tank} taken`, records, {
      ...records,
      size: putRecords(records.size, [size]),
      localValue: putRecords(records.localValue, locals),
    }),
  );
}

export interface NewTank {
  readonly tank: Tank;
  /** What it costs from a day on, where that is known. */
  readonly priceCoins: number | undefined;
  readonly from: string;
}

/** A tank that is in no book yet, entered and taken in one act. One that is the client's own is not bought. */
export function takeNewTank(
  records: Records,
  job: string,
  { tank, priceCoins, from }: NewTank,
): Result<Change, string> {
  if (records.tank.has(tank.id)) return failed(`There is a tank called ${tank.id} already: choose another code.`);
  const size = newSize(records, job, { tank: tank.id, order: (sizesOf(records, job).at(-1)?.order ?? 0) + 1 });
  const pack = { id: freeId(`${tank.id}-1`, records.pack), material: tank.id, amount: 1 };
  const price =
    priceCoins === undefined
      ? []
      : [{ id: freeId(`${pack.id}@${from}`, records.packPrice), pack: pack.id, from, priceCoins }];
  return ok(
    diffRecords(`${tank.id} entered and taken`, records, {
      ...records,
      tank: putRecords(records.tank, [tank]),
      pack: putRecords(records.pack, price.length > 0 ? [pack] : []),
      packPrice: putRecords(records.packPrice, price),
      size: putRecords(records.size, [size]),
      localValue: putRecords(records.localValue, tank.clientsOwn ? ownTank(records, size) : []),
    }),
  );
}

/** The recipe's line that says the client brings the tank, where it has one. */
function ownTank(records: Records, size: Size): readonly LocalValue[] {
  const recipe = records.job.get(size.job)?.recipe;
  const line = [...records.line.values()].find((each) => each.recipe === recipe && each.use === 'clientTank');
  if (!line) return [];
  const id = freeId(`${size.id}.${line.name}`, records.localValue);
  return [
    {
      id,
      job: size.job,
      size: size.id,
      line: line.name,
      text: 'yes',
      note: 'the client brings the tank',
      by: 'client',
    },
  ];
}

/** A second column of a size's tank straight after it: by the house, or with all its local values. */
export function takeAgain(records: Records, id: string, how: 'by the house' | 'as it is'): Result<Change, string> {
  const size = records.size.get(id);
  if (!size) return failed('This size is no longer on the bench.');
  const later = sizesOf(records, size.job).filter((each) => each.order > size.order);
  const copy = { ...newSize(records, size.job, size), order: size.order + 1 };
  const moved = later.map((each) => ({ ...each, order: each.order + 1 }));
  const locals = how === 'as it is' ? copiedLocals(records, id, copy.id) : [];
  const kept = how === 'as it is' ? { ...copy, count: size.count } : copy;
  return ok(
    diffRecords(how === 'as it is' ? `${size.tank} copied` : `${size.tank} taken again`, records, {
      ...records,
      size: putRecords(records.size, [...moved, kept]),
      localValue: putRecords(records.localValue, locals),
    }),
  );
}

/** Takes a size off the bench with its local values; refused where something has been measured of it. */
export function putAway(records: Records, id: string, called: string): Result<Change, string> {
  if (!records.size.has(id)) return failed('This size is no longer on the bench.');
  const measured = [...records.actual.values()].some((actual) => actual.size === id);
  if (measured) return failed(`${called} stays: what it took has been written down for it.`);
  const locals = [...records.localValue.values()].filter((value) => value.size === id).map((value) => value.id);
  return ok(
    diffRecords(`${called} put away`, records, {
      ...records,
      size: putRecords(records.size, [], [id]),
      localValue: putRecords(records.localValue, [], locals),
    }),
  );
}

export function setCount(records: Records, id: string, count: number, called: string): Result<Change, string> {
  const size = records.size.get(id);
  if (!size) return failed('This size is no longer on the bench.');
  const buildable = Number.isInteger(count) && count >= 1 && count <= MOST_BUILDS;
  if (!buildable) return failed(`${called}: build a size 1 to ${MOST_BUILDS} times.`);
  return ok(sizesChange(records, [{ ...size, count }], `${called} times ${count}`));
}

/** More letters than these no card has room for. */
const MOST_LABEL_LETTERS = 40;

/** What a size is called in this job; an empty text calls it by its tank again. */
export function nameSize(records: Records, id: string, written: string, called: string): Result<Change, string> {
  const size = records.size.get(id);
  if (!size) return failed('This size is no longer on the bench.');
  const label = written.trim().replaceAll(/\s+/g, ' ');
  const refused = labelRefusal(records, size, label, called);
  if (refused !== undefined) return failed(refused);
  const says = label === '' ? `${called} called by its tank, ${size.tank}` : `${called} called ${label}`;
  return ok(sizesChange(records, [{ ...size, label }], says));
}

function labelRefusal(records: Records, size: Size, label: string, called: string): string | undefined {
  if (label === '' && size.label === '') return `${called}: write what it is to be called, such as Left of the door.`;
  if (label.length > MOST_LABEL_LETTERS) {
    return `${called}: a name has at most ${MOST_LABEL_LETTERS} letters; this one has ${label.length}.`;
  }
  const others = sizesOf(records, size.job).filter((each) => each.id !== size.id);
  const isTaken = label !== '' && others.some((each) => [each.label, each.tank].includes(label));
  return isTaken ? `Another size of this job is called ${label} already: choose another name.` : undefined;
}

function newSize(records: Records, job: string, of: Pick<Size, 'tank' | 'order'>): Size {
  return { id: freeId(`${job}-${of.tank}`, records.size), job, tank: of.tank, order: of.order, label: '', count: 1 };
}

function copiedLocals(records: Records, from: string, to: string): readonly LocalValue[] {
  const taken = new Map(records.localValue);
  return [...records.localValue.values()]
    .filter((value) => value.size === from)
    .map((value) => {
      const copy = { ...value, id: freeId(`${to}.${value.line}`, taken), size: to };
      taken.set(copy.id, copy);
      return copy;
    });
}

function sizesChange(records: Records, sizes: readonly Size[], label: string): Change {
  return diffRecords(label, records, { ...records, size: putRecords(records.size, sizes) });
}
