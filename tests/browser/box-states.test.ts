import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Records } from '#shared-calc/records/records.ts';
import { boxOf, goTo, plain, quietLine, seenBox, type SeenBox } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { withRawValues, withValues, writeIn, type Act } from './write-in.ts';

const pages = useServedBook();

/** A book whose bench holds every state at once. */
function everyState(book: string): void {
  writeIn(book, [
    withValues({
      drain_gap: '12 mm',
      'T07.litter': '20 mm',
      'T07.drainage': '30 mm + 5 mm',
      'T03.moisture_start': '',
      'T08.litter': '500 mm',
    }),
    // The page refuses a cycle: it can only come from another program.
    withRawValues([{ size: 'J01-T08', line: 'drainage', text: 'soil_front - 10 mm' }]),
    leavesLastPricedIn2025,
  ]);
}

const leavesLastPricedIn2025: Act = ({ packPrice }: Records) => {
  const prices = [...packPrice.values()].filter(({ pack }) => pack.startsWith('M15-'));
  const updated = prices.map((from) => ({ kind: 'packPrice' as const, from, to: { ...from, from: '2025-01-04' } }));
  return { ok: true, value: { label: 'old prices', added: [], updated, removed: [] } };
};

interface Look {
  readonly edge: string;
  readonly edgeColour: string;
  readonly leftEdge: string;
  readonly ground: string;
  readonly ink: string;
  /** Of the words at the left. */
  readonly saidInk: string;
  /** What is drawn at the left edge: the notch, or nothing. */
  readonly notch: boolean;
}

/** How a cell is painted; colours by their token names. */
function lookOf(page: Page, line: string, size: string): Promise<Look> {
  return boxOf(page, line, size).evaluate((cell) => {
    const box = cell.querySelector('[data-form]') ?? cell;
    const style = getComputedStyle(box);
    const notch = getComputedStyle(box, '::before');
    const said = box.querySelector('[data-part="said"]');
    const named = new Map([['rgba(0, 0, 0, 0)', 'none']]);
    const probe = document.body.appendChild(document.createElement('i'));
    for (const name of [
      'ink',
      'ink-muted',
      'well',
      'well-edge',
      'local',
      'local-soft',
      'amber',
      'amber-soft',
      'red',
      'red-soft',
    ]) {
      probe.style.color = `var(--${name})`;
      named.set(getComputedStyle(probe).color, name);
    }
    probe.remove();
    const called = (colour: string) => named.get(colour) ?? colour;
    return {
      edge: style.borderTopStyle,
      edgeColour: called(style.borderTopColor),
      leftEdge: `${style.borderLeftWidth} ${called(style.borderLeftColor)}`,
      ground: called(style.backgroundColor),
      ink: called(style.color),
      saidInk: said ? called(getComputedStyle(said).color) : '',
      notch: notch.content !== 'none' && notch.clipPath.startsWith('polygon'),
    };
  });
}

const plainWell: Look = {
  edge: 'solid',
  edgeColour: 'well-edge',
  leftEdge: '1px well-edge',
  ground: 'well',
  ink: 'ink',
  saidInk: '',
  notch: false,
};
const plainFlat: Look = {
  edge: 'solid',
  edgeColour: 'none',
  leftEdge: '1px none',
  ground: 'none',
  ink: 'ink',
  saidInk: '',
  notch: false,
};
const local: Look = {
  edge: 'solid',
  edgeColour: 'local',
  leftEdge: '1px local',
  ground: 'local-soft',
  ink: 'ink',
  saidInk: 'local',
  notch: true,
};

interface Case {
  readonly state: string;
  readonly box: readonly [line: string, size: string];
  readonly seen: Omit<SeenBox, 'form' | 'source' | 'state'>;
  readonly look: Partial<Look>;
  /** The states that the working panel lists. */
  readonly standing: readonly string[];
}

const cases: readonly Case[] = [
  {
    state: 'house, given',
    box: ['Litter depth', 'T03'],
    seen: { figure: '30', said: '', sign: false, spoken: 'Litter depth, T03, 30 mm, house figure' },
    look: plainWell,
    standing: [],
  },
  {
    state: 'house, worked',
    box: ['Soil at the front', 'T07'],
    seen: { figure: '95', said: '', sign: false, spoken: 'Soil at the front, T07, 95 mm, house rule' },
    look: plainFlat,
    standing: [],
  },
  {
    state: 'local value',
    box: ['Litter depth', 'T07'],
    seen: { figure: '20', said: 'local', sign: false, spoken: 'Litter depth, T07, 20 mm, local figure' },
    look: local,
    standing: ['Local value, for T07 only'],
  },
  {
    state: 'local rule',
    box: ['Drainage depth', 'T07'],
    seen: { figure: '35', said: 'local rule', sign: false, spoken: 'Drainage depth, T07, 35 mm, local rule' },
    look: local,
    standing: ['Local rule, for T07 only'],
  },
  {
    state: 'job',
    box: ['Air gap under the mesh', 'T07'],
    seen: {
      figure: '12',
      said: 'whole job',
      sign: false,
      spoken: 'Air gap under the mesh, T07, 12 mm, whole job figure',
    },
    look: { ...plainWell, leftEdge: '4px local', saidInk: 'local' },
    standing: ['Value for the whole job'],
  },
  {
    state: 'needs a figure',
    box: ['Moisture at start', 'T03'],
    seen: { figure: '', said: 'needs a figure', sign: true, spoken: 'Moisture at start, T03, needs a figure' },
    look: { edge: 'dashed', edgeColour: 'amber', ground: 'amber-soft', saidInk: 'amber' },
    standing: ['Local value, for T03 only', 'Needs a figure: moisture at start.'],
  },
  {
    state: 'waiting',
    box: ['Wetting water', 'T03'],
    seen: {
      figure: '',
      said: 'waits on moisture at start',
      sign: true,
      spoken: 'Wetting water, T03, waits on moisture at start',
    },
    look: { ...plainFlat, ink: 'ink-muted', saidInk: 'ink-muted' },
    standing: ['Waits on moisture at start. Needs a figure: moisture at start.'],
  },
  {
    state: 'out of range',
    box: ['Litter depth', 'T08'],
    seen: {
      figure: '500',
      said: 'local, out of range',
      sign: true,
      spoken: 'Litter depth, T08, 500 mm, local figure, out of range',
    },
    look: { edge: 'solid', edgeColour: 'red', ground: 'red-soft', ink: 'red', saidInk: 'red', notch: true },
    standing: ['Local value, for T08 only', 'Out of range: it lies between 0 mm and 120 mm.'],
  },
  {
    state: 'loop',
    box: ['Soil at the front', 'T08'],
    seen: { figure: '', said: 'depends on itself', sign: true, spoken: 'Soil at the front, T08, depends on itself' },
    look: { edge: 'solid', notch: false, saidInk: 'red' },
    standing: ['This box depends on itself: soil_front -> drainage -> soil_front. 5 checks wait for it.'],
  },
  {
    state: 'loop, where the rule is written',
    box: ['Drainage depth', 'T08'],
    seen: { figure: '', said: 'depends on itself', sign: true, spoken: 'Drainage depth, T08, depends on itself' },
    look: { ...local, saidInk: 'red' },
    standing: [
      'Local rule, for T08 only',
      'This box depends on itself: drainage -> soil_front -> drainage. 5 checks wait for it.',
    ],
  },
  {
    state: 'old price',
    box: ['Oak leaves, dry', 'T03'],
    seen: {
      figure: '79.72',
      said: 'old price',
      sign: true,
      spoken: 'Oak leaves, dry, T03, 79.72 g, house rule, old price',
    },
    look: { ...plainFlat, saidInk: 'amber' },
    standing: ['Old price: look it up again in the material book.'],
  },
  {
    state: 'a check that stops',
    box: ['Shelf holds', 'T07'],
    // 80 % of the shelf's 100 kg are 80.
    seen: {
      figure: '17.88 kg over',
      said: 'stop',
      sign: true,
      spoken: "Shelf holds, T07, stop: 97.88 kg with the drain blocked is more than the shelf's share.",
    },
    look: { saidInk: 'red' },
    standing: ['Stop'],
  },
  {
    state: 'a check that holds',
    box: ['Lift empty', 'T07'],
    seen: { figure: '', said: 'holds', sign: false, spoken: 'Lift empty, T07, holds' },
    look: { ink: 'ink-muted' },
    standing: ['Holds'],
  },
];

describe('each state of a box', () => {
  let page: Page;
  beforeAll(async () => {
    page = await pages.begin('bench', everyState);
  });

  test.each(cases)(
    '$state: looks so, and says so to the eye and to a reader',
    async ({ box: [line, size], seen, look, standing }) => {
      await goTo(page, line, size);
      const { figure = '', said = '', sign = false, spoken = '' } = (await seenBox(page, line, size)) ?? {};
      const states = (await page.getByRole('complementary').locator('p[data-state]').allInnerTexts()).map(plain);
      const whole = await lookOf(page, line, size);
      expect({ figure, said, sign, spoken, standing: states, look: { ...whole, ...look } }).toEqual({
        ...seen,
        standing,
        look: whole,
      });
    },
  );

  test('the foot tells of an old price, of what a sum waits on, and counts flags by kind', async () => {
    const foot = await Promise.all(
      [
        ['Cost', 'T07'],
        ['Price', 'T08'],
        ['Flags', 'T08'],
      ].map(async ([line = '', size = '']) => seenBox(page, line, size)),
    );
    expect(foot.map((box) => [box?.figure, box?.said, box?.sign])).toEqual([
      ['1,318.58', '1 old price', true],
      ['', 'waits on drainage depth', true],
      ['', '1 stop2 watch7 not known yet1 advice1 out of range2 in a cycle', true],
    ]);
  });

  test('a worked box shows an edge when it is pointed at, because it can be overwritten', async () => {
    await goTo(page, 'Soil at the front', 'T03');
    await boxOf(page, 'Soil at the front', 'T07').hover();
    expect((await lookOf(page, 'Soil at the front', 'T07')).edgeColour).not.toBe('none');
  });
});

describe('a box of an issued quote', () => {
  test('lies flat under a lock, says in which quote, and is not written over', async () => {
    const page = await pages.begin('quotes/J01');
    await page.getByRole('button', { name: 'Issue', exact: true }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Issue', exact: true }).click();
    await page.waitForSelector('main > header p:has-text("issued as Q-0001")');
    await page.evaluate(() => (location.hash = '#/bench/Q-0001A'));
    await page.waitForSelector('[role="gridcell"]');
    await goTo(page, 'Litter depth', 'T07');
    const seen = await seenBox(page, 'Litter depth', 'T07');
    const look = await lookOf(page, 'Litter depth', 'T07');
    await page.keyboard.type('2');
    expect([
      seen?.said,
      seen?.sign,
      seen?.spoken,
      look,
      await page.locator('[popover="manual"] textarea').count(),
    ]).toEqual([
      'in quote Q-0001 A',
      true,
      'Litter depth, T07, 30 mm, house figure, in quote Q-0001 A',
      expect.objectContaining({ edgeColour: 'none', ground: 'none', ink: 'ink-muted' }),
      0,
    ]);
    expect(await quietLine(page)).toContain('This quote is issued and stays as it is. Make a revision to change it.');
  });
});

noneComplained(pages);
