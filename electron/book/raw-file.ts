/**
 * Reads the pages of a database file by themselves, as the format is published (https://sqlite.org/fileformat2.html), so
 * that a damaged page costs its own rows and no others. Nothing is trusted: what does not fit is left out.
 */
export interface RawFile {
  /** The pages below the root of a table that hold its rows, in order. */
  readonly leaves: (root: number) => readonly number[];
  /** Whether every page of a tree, of a table or an index, is still one of a tree. */
  readonly isWhole: (root: number) => boolean;
  /** Every page with rows of a table, or entries of an index, that is not free. */
  readonly allLeaves: (of: 'table' | 'index') => readonly number[];
  /** The rows on a page; those that cannot be read whole are left out. */
  readonly rows: (page: number) => readonly RawRow[];
}

export type RawCell = string | number | null;
export type RawRow = readonly RawCell[];

const tableLeaf = 13;
const indexLeaf = 10;
const tableInterior = 5;
const indexInterior = 2;
const headerBytes = 100;
const usualPageSize = 4096;

interface Pages {
  readonly count: number;
  readonly usable: number;
  readonly page: (nth: number) => Buffer | undefined;
  /** Where the header of a page starts: the first page begins with that of the file. */
  readonly start: (nth: number) => number;
}

export function rawFile(bytes: Buffer): RawFile {
  const pages = pagesOf(bytes);
  return {
    leaves: (root) => leavesBelow(pages, root, new Set()),
    isWhole: (root) => isWholeBelow(pages, root, new Set()),
    allLeaves: (of) => {
      const free = freePages(pages);
      const types: readonly unknown[] = of === 'table' ? [tableLeaf] : [indexLeaf, indexInterior];
      return pageNumbers(pages).filter((nth) => types.includes(typeOf(pages, nth)) && !free.has(nth));
    },
    rows: (nth) => rowsOn(pages, nth),
  };
}

function pagesOf(bytes: Buffer): Pages {
  const said = bytes.length >= headerBytes ? bytes.readUInt16BE(16) : 0;
  const size = said === 1 ? 65_536 : said >= 512 && (said & (said - 1)) === 0 ? said : usualPageSize;
  const reserved = bytes.length >= headerBytes ? bytes.readUInt8(20) : 0;
  return {
    count: Math.floor(bytes.length / size),
    usable: size - (reserved <= 32 ? reserved : 0),
    page: (nth) => (nth < 1 || nth * size > bytes.length ? undefined : bytes.subarray((nth - 1) * size, nth * size)),
    start: (nth) => (nth === 1 ? headerBytes : 0),
  };
}

function pageNumbers({ count }: Pages): readonly number[] {
  return Array.from({ length: count }, (_, at) => at + 1);
}

function typeOf(pages: Pages, nth: number): number | undefined {
  return pages.page(nth)?.readUInt8(pages.start(nth));
}

function leavesBelow(pages: Pages, nth: number, seen: Set<number>): readonly number[] {
  if (seen.has(nth)) return [];
  seen.add(nth);
  const type = typeOf(pages, nth);
  if (type === tableLeaf) return [nth];
  return type === tableInterior ? childrenOf(pages, nth).flatMap((child) => leavesBelow(pages, child, seen)) : [];
}

function isWholeBelow(pages: Pages, nth: number, seen: Set<number>): boolean {
  if (seen.has(nth)) return false;
  seen.add(nth);
  const type = typeOf(pages, nth);
  if (type === tableLeaf || type === indexLeaf) return true;
  const isInterior = type === tableInterior || type === indexInterior;
  return isInterior && childrenOf(pages, nth).every((child) => isWholeBelow(pages, child, seen));
}

function childrenOf(pages: Pages, nth: number): readonly number[] {
  const page = pages.page(nth);
  if (!page) return [];
  const children = cellStarts(page, pages.start(nth)).map((at) => readUInt32(page, at));
  return [...children, readUInt32(page, pages.start(nth) + 8)].filter((child) => child !== undefined);
}

/** Where the cells of a page start. */
function cellStarts(page: Buffer, start: number): readonly number[] {
  const isInterior = [tableInterior, indexInterior].includes(page.readUInt8(start));
  const first = start + (isInterior ? 12 : 8);
  const count = Math.min(page.readUInt16BE(start + 3), Math.floor((page.length - first) / 2));
  return Array.from({ length: count }, (_, at) => page.readUInt16BE(first + 2 * at)).filter((at) => at >= first);
}

function freePages(pages: Pages): ReadonlySet<number> {
  const free = new Set<number>();
  let trunk = readUInt32(pages.page(1), 32) ?? 0;
  while (trunk > 0 && trunk <= pages.count && !free.has(trunk)) {
    free.add(trunk);
    const page = pages.page(trunk);
    const count = Math.min(readUInt32(page, 4) ?? 0, pages.usable / 4 - 2);
    for (let at = 0; at < count; at += 1) free.add(readUInt32(page, 8 + 4 * at) ?? 0);
    trunk = readUInt32(page, 0) ?? 0;
  }
  return free;
}

function rowsOn(pages: Pages, nth: number): readonly RawRow[] {
  const page = pages.page(nth);
  if (!page) return [];
  return cellStarts(page, pages.start(nth)).flatMap((at) => {
    const row = rowAt(pages, page, at, typeOf(pages, nth) ?? 0);
    return row ? [row] : [];
  });
}

/** The row of a cell: its size, the row's number in a table, then its cells, which may go on on other pages. */
function rowAt(pages: Pages, page: Buffer, at: number, type: number): RawRow | undefined {
  const size = readVarint(page, type === indexInterior ? at + 4 : at);
  const number = type === tableLeaf ? readVarint(page, size.end) : size;
  if (size.value < 2 || size.value > pages.count * pages.usable) return undefined;
  const local = localBytes(pages.usable, size.value, type === tableLeaf);
  const here = page.subarray(number.end, number.end + local);
  if (here.length < local) return undefined;
  if (local === size.value) return readRow(here);
  const more = readChain(pages, readUInt32(page, number.end + local) ?? 0, size.value - local);
  return more && readRow(Buffer.concat([here, more]));
}

/** How many bytes of a row are on its own page. */
function localBytes(usable: number, size: number, isTable: boolean): number {
  const most = isTable ? usable - 35 : Math.floor(((usable - 12) * 64) / 255) - 23;
  if (size <= most) return size;
  const least = Math.floor(((usable - 12) * 32) / 255) - 23;
  const fitting = least + ((size - least) % (usable - 4));
  return fitting <= most ? fitting : least;
}

function readChain(pages: Pages, first: number, size: number): Buffer | undefined {
  const parts: Buffer[] = [];
  let nth = first;
  for (let left = size; left > 0; left -= pages.usable - 4) {
    const page = pages.page(nth);
    if (!page || parts.length > pages.count) return undefined;
    parts.push(page.subarray(4, Math.min(pages.usable, 4 + left)));
    nth = page.readUInt32BE(0);
  }
  return Buffer.concat(parts);
}

function readRow(bytes: Buffer): RawRow | undefined {
  const header = readVarint(bytes, 0);
  if (header.value > bytes.length) return undefined;
  const cells: RawCell[] = [];
  let at = header.value;
  for (let next = header.end; next < header.value;) {
    const type = readVarint(bytes, next);
    const cell = readCell(bytes, at, type.value);
    if (cell === undefined) return undefined;
    cells.push(cell.value);
    at = cell.end;
    next = type.end;
  }
  return at === bytes.length ? cells : undefined;
}

const integerBytes = [0, 1, 2, 3, 4, 6, 8, 8];

/** Bytes of a number by its type, of a text by the size in it; undefined for what a book does not have. */
function cellBytes(type: number): number | undefined {
  if (type < 13) return integerBytes[type];
  return type % 2 === 1 ? (type - 13) / 2 : undefined;
}

/** A cell by its serial type; a book has no blobs. */
function readCell(
  bytes: Buffer,
  at: number,
  type: number,
): { readonly value: RawCell; readonly end: number } | undefined {
  if (type === 8 || type === 9) return { value: type - 8, end: at };
  const size = cellBytes(type);
  if (size === undefined || at + size > bytes.length) return undefined;
  const end = at + size;
  if (type === 0) return { value: null, end };
  if (type >= 13) return { value: bytes.toString('utf8', at, end), end };
  if (type === 7) return { value: bytes.readDoubleBE(at), end };
  return { value: size === 8 ? Number(bytes.readBigInt64BE(at)) : bytes.readIntBE(at, size), end };
}

interface Varint {
  readonly value: number;
  readonly end: number;
}

/** Seven bits a byte, nine bytes at most; a number too large to be a size ends up larger than any file. */
function readVarint(bytes: Buffer, start: number): Varint {
  let value = 0;
  for (let at = start; at < start + 8; at += 1) {
    const byte = bytes[at];
    if (byte === undefined) return { value: Infinity, end: at };
    value = value * 128 + (byte & 127);
    if (byte < 128) return { value, end: at + 1 };
  }
  return { value: value * 256 + (bytes[start + 8] ?? 0), end: start + 9 };
}

function readUInt32(page: Buffer | undefined, at: number): number | undefined {
  return page && at + 4 <= page.length ? page.readUInt32BE(at) : undefined;
}
