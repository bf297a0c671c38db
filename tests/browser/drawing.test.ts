import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lwJson } from '#tests/electron/cli/run-cli.ts';
import { plain, write } from './bench-hands.ts';
import { pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { withSizes, withValues, writeIn } from './write-in.ts';

/** A tank of each shape; of T07 the rectangle is laid flat. */
const tanks = ['T07', 'T09', 'T10', 'T11', 'T12'] as const;
const pages = useServedBook();

const Told = z.object({
  columns: z.array(
    z.object({
      size: z.string(),
      lines: z.record(z.string(), z.object({ value: z.union([z.number(), z.string(), z.boolean(), z.null()]) })),
    }),
  ),
});

/** As the command line gives them from the same book. */
let columns: z.infer<typeof Told>['columns'];

type Figures = (line: string) => number;

/** Figures of a size in mm and counts. */
function figuresOf(size: string): Figures {
  const lines = columns.find((column) => column.size === size)?.lines ?? {};
  return (line) => Number(lines[line]?.value);
}

type Point = readonly [x: number, y: number];

interface Drawn {
  /** Outlines and lines by the name of their part, in mm from the inside front foot, up. */
  readonly parts: Readonly<Record<string, readonly (readonly Point[])[]>>;
  readonly lamps: number;
  readonly labels: readonly string[];
  readonly reads: string;
  readonly wrong: boolean;
  /** Pixels per mm on the screen. */
  readonly scale: number;
  /** Position of its floor on the screen. */
  readonly floor: number;
}

function drawn(page: Page, size: string): Promise<Drawn> {
  return page.locator(`[data-card]:has(b:text-is("${size}")) svg[role="img"]`).evaluate((svg) => {
    const parts: Record<string, Point[][]> = {};
    for (const path of svg.querySelectorAll<SVGPathElement>('path[data-part]')) {
      const name = path.dataset['part'] ?? '';
      const points = [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)];
      (parts[name] ??= []).push(points.map(([, x, y]) => [Number(x), 0 - Number(y)] as const));
    }
    const box = svg.getBoundingClientRect();
    const view = (svg as SVGSVGElement).viewBox.baseVal;
    return {
      parts,
      lamps: svg.querySelectorAll('[data-part="lamp"]').length,
      labels: [...svg.querySelectorAll('text')].map((each) => each.textContent ?? ''),
      reads: svg.getAttribute('aria-label') ?? '',
      wrong: svg.getAttribute('data-state') === 'stop',
      scale: box.width / view.width,
      floor: box.top + (0 - view.y) * (box.height / view.height),
    };
  });
}

/** What the figures require: each layer front and back, bottom and top, and the lines of the tank. */
function asked(of: Figures, pane: { readonly edge?: number; readonly onePane?: boolean }) {
  const depth = mm(of('overall_depth'));
  const height = of('inside_height');
  const [clay, gap, cap] = [of('drainage'), of('drain_gap'), of('capping')];
  const [front, rise, litter] = [of('soil_front'), of('soil_rise'), of('litter')];
  const foot = clay + cap;
  const [glass, base, dam] = [of('glass'), of('base_glass'), of('dam_height')];
  const [wide, high] = [of('bead_width'), of('bead_height')];
  const up = of('mesh_upturn');
  const vent = of('cover_vent');
  return {
    drainage: [
      [
        [0, 0],
        [depth, 0],
        [depth, clay],
        [0, clay],
      ],
    ],
    water: [
      [
        [0, 0],
        [depth, 0],
        [depth, clay - gap],
        [0, clay - gap],
      ],
    ],
    waterline: [
      [
        [0, clay - gap],
        [depth, clay - gap],
      ],
    ],
    mesh: [
      [
        [0, clay + up],
        [0, clay],
        [depth, clay],
        [depth, clay + up],
      ],
    ],
    capping: [
      [
        [0, clay],
        [depth, clay],
        [depth, foot + high],
        [mm(depth - wide), foot],
        [wide, foot],
        [0, foot + high],
      ],
    ],
    soil: [
      [
        [0, foot],
        [depth, foot],
        [depth, foot + front + rise],
        [0, foot + front],
      ],
    ],
    // The lower half is solid; leaves make up the rest.
    litter: [
      [
        [0, foot + front],
        [depth, foot + front + rise],
        [depth, foot + front + rise + litter / 2],
        [0, foot + front + litter / 2],
      ],
    ],
    damline: [
      [
        [0, dam],
        [depth, dam],
      ],
    ],
    glass: [
      [
        [-glass, -base],
        [mm(depth + glass), -base],
        [mm(depth + glass), height],
        [depth, height],
        [depth, 0],
        [0, 0],
        [0, pane.onePane ? height : dam],
        [-glass, pane.onePane ? height : dam],
      ],
    ],
    lip: pane.onePane
      ? undefined
      : [
          [
            [-glass, -base],
            [0, -base],
            [0, dam],
            [-glass, dam],
          ],
        ],
    door: pane.onePane
      ? undefined
      : [
          [
            [-glass / 2, dam + 6],
            [-glass / 2, height],
          ],
        ],
    edge:
      pane.edge === undefined
        ? undefined
        : [
            [
              [pane.edge, 0],
              [pane.edge, height],
            ],
          ],
    cover: [
      [
        [vent, height + 3],
        [depth, height + 3],
      ],
    ],
  };
}

/** To a tenth, as it is drawn. */
function mm(figure: number): number {
  return Math.round(figure * 10) / 10;
}

describe('the section drawing of each shape, against the figures of its column', () => {
  let page: Page;
  beforeAll(async () => {
    page = await pages.begin('bench', (book) =>
      writeIn(book, [withSizes(tanks), withValues({ 'T07.soil_rise': '0 mm', 'T11.drain_gap': '12 mm' })]),
    );
    const answer = await lwJson('bench', '--job', 'J01', '--book', pages.book(), '--on', pageDay);
    columns = Told.parse(answer).columns;
    // Wide enough for every card to be drawn.
    await page.setViewportSize({ width: 2560, height: 1200 });
    await page.waitForFunction(() => document.querySelectorAll('[data-card] svg[role="img"]').length === 5);
  });

  const shapes = [
    { shape: 'rectangle, laid flat', size: 'T07', pane: {} },
    { shape: 'bow front', size: 'T09', pane: { edge: 70 } },
    // A corner of 580 with a return of 250: its near side ends 330 from the front.
    { shape: 'corner', size: 'T10', pane: { edge: 330 } },
    // A side of 300: 519.6 deep, with a side's end half way.
    { shape: 'hexagon', size: 'T11', pane: { edge: 259.8 } },
    { shape: 'cylinder', size: 'T12', pane: { onePane: true } },
  ];
  test.each(shapes)('$shape: every layer and pane is as thick and as high as its box says', async ({ size, pane }) => {
    const of = figuresOf(size);
    const { parts, lamps, wrong } = await drawn(page, size);
    const wanted = asked(of, pane);
    const seen = Object.fromEntries(Object.keys(wanted).map((name) => [name, parts[name]]));
    expect([seen, lamps, wrong]).toEqual([wanted, of('lamps'), false]);
  });

  test('labels and the words for readers say the same figures', async () => {
    const { labels, reads } = await drawn(page, 'T12');
    const of = figuresOf('T12');
    const soil = `${of('soil_front')}–${of('soil_front') + of('soil_rise')}`;
    expect([labels, reads]).toEqual([
      ['drainage 40', 'water 30', 'capping 10', `soil ${soil}`, 'fill line 140', 'litter 30'],
      `T12 side on: drainage 40, water 30, capping 10, soil ${soil}, fill line 140, litter 30 millimetres, 2 lamps`,
    ]);
  });

  test('all tanks stand to one scale on one plank', async () => {
    const all = await Promise.all(tanks.map((size) => drawn(page, size)));
    const rounded = (figure: number | undefined) => Math.round((figure ?? 0) * 1000) / 1000;
    expect([
      new Set(all.map(({ scale }) => rounded(scale))).size,
      new Set(all.map(({ floor }) => Math.round(floor))).size,
    ]).toEqual([1, 1]);
  });

  test('a layer that does not fit is seen at once: marked as thick as it is too high, in red and in words', async () => {
    await write(page, ['Drainage depth', 'T09'], '125');
    const { parts, labels, wrong, reads } = await drawn(page, 'T09');
    const red = await page.locator('[data-card]:has(b:text-is("T09")) [data-tone="wrong"]').evaluate((word) => {
      const { fill } = getComputedStyle(word);
      document.body.style.fill = 'var(--red)';
      return fill === getComputedStyle(document.body).fill;
    });
    expect([wrong, parts['misfit']?.length, labels.map(plain), reads, red]).toEqual([
      true,
      1,
      ['drainage 125', 'water 115', 'capping 10', 'too high 5', 'dam 140', 'soil −5–35', 'litter 30'],
      expect.stringContaining('too high 5'),
      true,
    ]);
    // By hand: 140 of dam less 125, 10 of capping and 10 of lip clearance are 5 too few; the back stands 35 over 135.
    const [ground = []] = parts['misfit'] ?? [];
    expect(ground).toEqual([
      [0, 130],
      [460, 165],
      [460, 170],
      [0, 135],
    ]);
  });

  test('an edit is drawn at once, and taken back it is as before', async () => {
    const before = await drawn(page, 'T07');
    await write(page, ['Litter depth', 'T07'], '60');
    const thick = await drawn(page, 'T07');
    await page.keyboard.press('Control+z');
    await page.waitForSelector('footer [role="alert"]:has-text("Undone")');
    const top = ({ parts }: Drawn) => Math.max(...(parts['litter']?.[0] ?? []).map(([, y]) => y));
    expect([top(before), top(thick), (await drawn(page, 'T07')).parts]).toEqual([155, 170, before.parts]);
  });
});

noneComplained(pages);
