import { crc32, deflateSync } from 'node:zlib';
import { drawMark, type Picture } from './draw-mark.ts';

/** Sizes of the icons that Linux desktops look for, px. */
const linuxSizes = [16, 24, 32, 48, 64, 128, 256, 512] as const;
const windowsSizes = [16, 24, 32, 48, 64, 128, 256] as const;
/** Types of the pictures in an icon file of macOS, with their sizes, px; the second of a size is for dense screens. */
const macTypes = [
  ['icp4', 16],
  ['icp5', 32],
  ['ic11', 32],
  ['ic12', 64],
  ['ic07', 128],
  ['ic13', 256],
  ['ic08', 256],
  ['ic14', 512],
  ['ic09', 512],
  ['ic10', 1024],
] as const;

/** Every icon file of the packed program by its name, drawn from the mark. */
export function iconFiles(svg: string): ReadonlyMap<string, Buffer> {
  const drawn = new Map<number, Buffer>();
  const png = (size: number): Buffer => {
    const known = drawn.get(size) ?? writePng(drawMark(svg, size));
    drawn.set(size, known);
    return known;
  };
  return new Map([
    ...linuxSizes.map((size) => [`${size}x${size}.png`, png(size)] as const),
    ['icon.ico', writeIco(windowsSizes.map((size) => ({ size, png: png(size) })))],
    ['icon.icns', writeIcns(macTypes.map(([type, size]) => ({ type, png: png(size) })))],
  ]);
}

function writePng({ size, bytes }: Picture): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  // 8 bits a colour, with opacity.
  head.set([8, 6, 0, 0, 0], 8);
  // Each row begins with its filter: none.
  const rows = Array.from({ length: size }, (_, row) =>
    Buffer.concat([Buffer.from([0]), bytes.subarray(row * size * 4, (row + 1) * size * 4)]),
  );
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(Buffer.concat(rows), { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  return Buffer.concat([uint32(data.length), named, uint32(crc32(named))]);
}

function uint32(value: number): Buffer {
  const made = Buffer.alloc(4);
  made.writeUInt32BE(value);
  return made;
}

interface IcoPart {
  readonly size: number;
  readonly png: Buffer;
}

/** A head of 6 bytes, 16 for each picture, then the pictures. */
function writeIco(parts: readonly IcoPart[]): Buffer {
  const head = Buffer.alloc(6 + 16 * parts.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(parts.length, 4);
  let offset = head.length;
  for (const [at, { size, png }] of parts.entries()) {
    // 256 is written as 0.
    head.set([size % 256, size % 256], 6 + 16 * at);
    head.writeUInt16LE(1, 10 + 16 * at);
    head.writeUInt16LE(32, 12 + 16 * at);
    head.writeUInt32LE(png.length, 14 + 16 * at);
    head.writeUInt32LE(offset, 18 + 16 * at);
    offset += png.length;
  }
  return Buffer.concat([head, ...parts.map(({ png }) => png)]);
}

interface IcnsPart {
  readonly type: string;
  readonly png: Buffer;
}

function writeIcns(parts: readonly IcnsPart[]): Buffer {
  const entries = parts.map(({ type, png }) =>
    Buffer.concat([Buffer.from(type, 'latin1'), uint32(png.length + 8), png]),
  );
  const all = Buffer.concat(entries);
  return Buffer.concat([Buffer.from('icns', 'latin1'), uint32(all.length + 8), all]);
}
