import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import { sectionGeometry } from '#renderer/drawing/section-geometry.ts';
import type { LayerPart, LinePart, Point, SectionGeometry } from '#renderer/drawing/section-shapes.ts';

/** T07 of the demo under H1, laid flat. */
const t07: SectionFigures = {
  shape: 'rectangle',
  overallDepth: 445,
  insideHeight: 600,
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
};

/** Removes noise of a billionth. */
function tidy(figure: number): number {
  return Math.round(figure * 1e6) / 1e6;
}

/** mm2 of a polygon, by the sum over its edges. */
function areaOf(outline: readonly Point[]): number {
  const doubled = outline.map(({ x, y }, index) => {
    const next = outline[(index + 1) % outline.length] ?? { x: 0, y: 0 };
    return x * next.y - next.x * y;
  });
  return tidy(Math.abs(doubled.reduce((sum, each) => sum + each, 0)) / 2);
}

function drawn(figures: Partial<SectionFigures> = {}): SectionGeometry {
  const geometry = sectionGeometry({ ...t07, ...figures });
  if (!geometry) throw new Error('not drawn');
  return geometry;
}

function area(geometry: SectionGeometry, part: LayerPart): number {
  return areaOf(geometry.layers.find((layer) => layer.part === part)?.outline ?? []);
}

function stroke(geometry: SectionGeometry, part: LinePart): readonly Point[] | undefined {
  return geometry.strokes.find((each) => each.part === part)?.points;
}

const parts = ['drainage', 'water', 'capping', 'soil', 'litter', 'misfit'] as const;

describe('sectionGeometry', () => {
  test('times the length of T07, its layers are the litres of scenario 1', () => {
    const geometry = drawn();
    const litres = (part: LayerPart) => tidy((area(geometry, part) * 900) / 1e6);
    expect({
      drainage: litres('drainage'),
      // 0.4005 m2 at 10 mm and the clay edge along front and back only: 4.005 + 2 * 200 mm2 * 0.9 m
      capping: litres('capping'),
      soil: litres('soil'),
    }).toEqual({
      drainage: tidy(16.02),
      capping: tidy(4.365),
      soil: tidy(36.045),
    });
  });

  const shapes = [
    { of: 'rectangle', figures: {} },
    { of: 'sloped', figures: { soilRise: 40 } },
    { of: 'bow', figures: { shape: 'bow', overallDepth: 460, frontBow: 70, soilRise: 40 } },
    { of: 'corner', figures: { shape: 'corner', overallDepth: 580, sideReturn: 250, soilRise: 60 } },
    {
      of: 'hexagon',
      figures: { shape: 'hexagon', overallDepth: 519.615, damHeight: 120, drainage: 30, soilFront: 70 },
    },
    {
      of: 'cylinder',
      figures: { shape: 'cylinder', overallDepth: 400, insideHeight: 500, damHeight: 140, soilFront: 80 },
    },
  ] as const;
  test.each(shapes)('each layer of a $of tank is its depth over the tank from front to back', ({ figures }) => {
    const given = { ...t07, ...figures };
    const depth = given.overallDepth ?? 0;
    const geometry = drawn(figures);
    expect(parts.map((part) => area(geometry, part))).toEqual(
      [
        depth * (given.drainage ?? 0),
        depth * ((given.drainage ?? 0) - 10),
        depth * 10 + 20 * 20,
        depth * ((given.soilFront ?? 0) + (given.soilRise ?? 0) / 2),
        depth * 30,
        0,
      ].map(tidy),
    );
  });

  test('panes seen from the side meet where the bow, the near side or the hexagon ends', () => {
    const edges = shapes.map(({ of, figures }) => [of, stroke(drawn(figures), 'edge')?.[0]?.x]);
    expect(edges).toEqual([
      ['rectangle', undefined],
      ['sloped', undefined],
      ['bow', 70],
      ['corner', 330],
      ['hexagon', 519.615 / 2],
      ['cylinder', undefined],
    ]);
  });

  test('a tank with doors has a lip to the dam, a slot and a door; a cylinder is one pane', () => {
    const [door, one] = [drawn(), drawn({ shape: 'cylinder' })];
    expect([
      door.lip.map(({ y }) => y),
      stroke(door, 'door'),
      door.glass.at(-1)?.y,
      one.lip,
      stroke(one, 'door'),
      one.glass.at(-1)?.y,
    ]).toEqual([
      [-6, -6, 150, 150],
      [
        { x: -3, y: 156 },
        { x: -3, y: 600 },
      ],
      150,
      [],
      undefined,
      600,
    ]);
  });

  test('a front vent higher than the slot opens under the door', () => {
    expect(stroke(drawn({ frontVent: 8 }), 'door')?.[0]).toEqual({ x: -3, y: 158 });
  });

  test('the cover leaves the vent strip open at the front, and is not there where the strip is the whole top', () => {
    expect([stroke(drawn(), 'cover'), stroke(drawn({ coverVent: 445 }), 'cover')]).toEqual([
      [
        { x: 25, y: 603 },
        { x: 445, y: 603 },
      ],
      undefined,
    ]);
  });

  test('water stands up to the drain gap, the mesh turns up at the glass', () => {
    const geometry = drawn();
    expect([stroke(geometry, 'waterline'), stroke(geometry, 'mesh')]).toEqual([
      [
        { x: 0, y: 30 },
        { x: 445, y: 30 },
      ],
      [
        { x: 0, y: 70 },
        { x: 0, y: 40 },
        { x: 445, y: 40 },
        { x: 445, y: 70 },
      ],
    ]);
  });

  const misfits = [
    { of: 'a stack 25 mm over the room the dam leaves', figures: { drainage: 120, soilFront: -25 }, over: 25 },
    { of: 'soil written in 30 mm over the dam', figures: { soilFront: 130 }, over: 30 },
    {
      of: 'drainage alone over the dam',
      figures: { drainage: 160, capping: undefined, soilFront: undefined },
      over: 10,
    },
    { of: 'a stack that just fits', figures: { soilFront: 100 }, over: 0 },
  ];
  test.each(misfits)('$of is marked as thick as it is too high', ({ figures, over }) => {
    const geometry = drawn(figures);
    const label = geometry.labels.find((each) => each.tone === 'wrong');
    expect([geometry.over, area(geometry, 'misfit'), label?.figure]).toEqual([
      over,
      tidy(445 * over),
      over > 0 ? String(over) : undefined,
    ]);
  });

  test('soil that rises behind the dam is no misfit', () => {
    expect(drawn({ soilRise: 120 }).over).toBe(0);
  });

  test('what rests on a figure not known is left out', () => {
    expect([
      drawn({ soilFront: undefined }).layers.map((layer) => layer.part),
      drawn({ drainage: undefined }).layers,
      sectionGeometry({ ...t07, overallDepth: undefined }),
      sectionGeometry({ ...t07, insideHeight: 0 }),
    ]).toEqual([['drainage', 'water', 'capping'], [], undefined, undefined]);
  });

  test('lamps hang evenly and never one over another', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 100, max: 1500 }), (lamps, depth) => {
        const bars = drawn({ lamps, overallDepth: depth }).lamps;
        const gaps = bars
          .slice(1)
          .map((bar, index) => bar.centre - bar.width / 2 - (bars[index]?.centre ?? 0) - bar.width / 2);
        expect([bars.length, gaps.every((gap) => gap > 0)]).toEqual([lamps, true]);
      }),
    );
  });

  test('layers stack without a gap, whatever the figures', () => {
    const mm = (max: number) => fc.integer({ min: 1, max });
    fc.assert(
      fc.property(
        fc.record({ drainage: mm(80), capping: mm(30), soilFront: mm(200), soilRise: mm(120), litter: mm(120) }),
        (figures) => {
          const { drainage, capping } = figures;
          const { layers } = drawn(figures);
          const front = (part: LayerPart) =>
            layers
              .find((layer) => layer.part === part)
              ?.outline.filter(({ x }) => x === 0)
              .map(({ y }) => y) ?? [];
          expect([Math.max(...front('drainage')), Math.min(...front('soil')), Math.min(...front('litter'))]).toEqual([
            Math.min(...front('capping')),
            drainage + capping,
            Math.max(...front('soil')),
          ]);
        },
      ),
    );
  });
});
