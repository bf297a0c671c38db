import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawMark } from '#electron/package/draw-mark.ts';
import { iconFiles } from '#electron/package/icon-files.ts';

const mark = readFileSync(new URL('../../../renderer/look/mark.svg', import.meta.url), 'utf8');

describe('drawMark', () => {
  test('the tank is glass on three sides, open at the top, with soil in it', () => {
    const { size, bytes } = drawMark(mark, 20);
    const at = (x: number, y: number) => [...bytes.subarray((y * size + x) * 4, (y * size + x) * 4 + 4)];
    expect({ outside: at(0, 0), glass: at(2, 10), air: at(10, 5), soil: at(10, 13), above: at(10, 0)[3] }).toEqual({
      outside: [0, 0, 0, 0],
      glass: [42, 37, 31, 255],
      air: [242, 235, 223, 255],
      soil: [107, 83, 64, 255],
      above: 0,
    });
  });

  test('a mark with a curve is refused, not drawn wrong', () => {
    expect(() => drawMark('<svg viewBox="0 0 20 20"><path d="M0 0c1 1 2 2 3 3z" fill="#000000"/></svg>', 16)).toThrow(
      /not drawn here/,
    );
  });
});

describe('iconFiles', () => {
  test('every system finds its sizes, each a picture of that size', () => {
    const files = iconFiles(mark);
    const pngSize = (png: Buffer) => [png.toString('latin1', 1, 4), png.readUInt32BE(16), png.readUInt32BE(20)];
    expect([...files].filter(([name]) => name.endsWith('.png')).map(([name, png]) => [name, ...pngSize(png)])).toEqual(
      [16, 24, 32, 48, 64, 128, 256, 512].map((size) => [`${size}x${size}.png`, 'PNG', size, size]),
    );
    const [ico, icns] = [files.get('icon.ico'), files.get('icon.icns')];
    const parts = Array.from({ length: ico?.readUInt16LE(4) ?? 0 }, (_, at) => {
      const offset = ico?.readUInt32LE(18 + 16 * at) ?? 0;
      return ico ? pngSize(ico.subarray(offset)) : [];
    });
    expect(parts.map(([, size]) => size)).toEqual([16, 24, 32, 48, 64, 128, 256]);
    expect([icns?.toString('latin1', 0, 4), icns?.readUInt32BE(4)]).toEqual(['icns', icns?.length]);
  });
});
