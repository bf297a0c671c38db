import { describe, expect, test } from 'vitest';
import { benchMetrics } from '#renderer/bench/bench-metrics.ts';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';

const section = (insideHeight: number, overallDepth: number): SectionFigures => ({
  shape: 'rectangle',
  overallDepth,
  insideHeight,
  damHeight: 150,
  glass: 6,
  baseGlass: 6,
  frontBow: 0,
  sideReturn: 0,
  frontVent: 0,
  drainage: 40,
  drainGap: 10,
  meshThickness: 0,
  meshUpturn: 30,
  capping: 10,
  beadWidth: 20,
  beadHeight: 20,
  soilFront: 90,
  soilRise: 0,
  litter: 30,
  coverVent: 25,
  lamps: 3,
});
const sizes = (count: number) => Array.from({ length: count }, () => section(600, 445));
const room = (pageWidth: number, pageHeight: number, width: number) => ({ pageWidth, pageHeight, width, rem: 16 });

describe('benchMetrics', () => {
  test.each([
    ['1440 x 900', room(1440, 900, 920), { narrow: false, names: 242, strip: 226, spare: false, scale: 0.212 }],
    ['1280 x 800', room(1280, 800, 816), { narrow: false, names: 216, strip: 200, spare: false, scale: 0.17 }],
    ['1920 x 1080', room(1920, 1080, 1340), { narrow: false, names: 288, strip: 264, spare: true, scale: 0.24 }],
    ['400 % zoom', room(320, 256, 308), { narrow: true, names: 152, strip: 156, spare: false, scale: 64 / 457 }],
  ])('three sizes at %s', (_, given, wanted) => {
    const { narrow, names, strip, spare, scale } = benchMetrics(given, sizes(3));
    expect({ narrow, names, strip, spare, scale }).toEqual(wanted);
  });

  test('more sizes than fit leave the names their least width', () => {
    expect(benchMetrics(room(1440, 900, 920), sizes(8)).names).toBe(216);
  });

  test('a row is 24 px with a box of 21 in it, the foot 18, the price 24 and its two rules', () => {
    const { line, section: head, foot, price } = benchMetrics(room(1440, 900, 920), sizes(1));
    expect([line, head, foot, price]).toEqual([24, 24, 18, 28]);
  });

  test('a tank higher or deeper than usual makes all drawings smaller together', () => {
    const scale = (...tanks: readonly SectionFigures[]) =>
      benchMetrics(room(1440, 900, 920), [...sizes(2), ...tanks]).scale;
    expect([scale(section(1200, 600)) * (1200 + 68) <= 142, scale(section(600, 1000)) * 1012 <= 134.01]).toEqual([
      true,
      true,
    ]);
  });
});
