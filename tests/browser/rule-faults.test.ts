import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { figures, goTo, plain, quietLine, seenBox, stored, write } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('bench');
});

/** Written in *Soil, placed*, a volume: the kind of fault, the rule, what is underlined, what is said below. */
const faults: readonly (readonly [kind: string, rule: string, marked: readonly string[], says: readonly string[]])[] = [
  [
    'stops too early',
    'soil_gross *',
    ['*'],
    ['The rule stops too early: a figure, a line or a function is missing at the end.'],
  ],
  ['a bracket left open', '(soil_gross', ['s'], ['The rule stops too early: a closing bracket is missing at the end.']],
  [
    'two figures side by side',
    'soil_gross edge_bead',
    ['edge_bead'],
    ['A sign such as + or the end should stand where edge_bead is.'],
  ],
  [
    'a comma left out',
    'max(soil_gross edge_bead)',
    ['edge_bead'],
    ['A comma or a closing bracket should stand where edge_bead is.'],
  ],
  [
    'a decimal comma in a rule',
    '12,5 L * 2',
    [','],
    ['A comma parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm.'],
  ],
  ['a character without meaning', 'soil_gross # 2', ['#'], ['# has no meaning in a rule; take it out.']],
  [
    'words not closed',
    'pick(kit, "full',
    ['"full'],
    ['The words in quotes are not closed; put a " behind the last of them.'],
  ],
  ['an equals sign in front', '=soil_gross', ['='], ['A rule has no = in front; leave it out.']],
  [
    'an unknown unit',
    'soil_gross - 12 furlong',
    ['furlong'],
    ['Nothing called furlong is a unit. Put a sign such as * between a number and a name.'],
  ],
  ['a number too large', 'soil_gross * 1e999', ['1e999'], ['1e999 is too large a number to work with.']],
  [
    'too deep',
    `${'('.repeat(61)}1 L${')'.repeat(61)}`,
    ['('],
    ['The rule goes more than 60 levels deep. Put part of it in a line of its own.'],
  ],
  ['an unknown name', 'sol_gross - edge_bead', ['sol_gross'], ['Nothing called sol_gross. Did you mean soil_gross?']],
  [
    'an unknown function',
    'clmap(soil_gross, 1 L, 2 L)',
    ['clmap'],
    ['No function is called clmap. Did you mean clamp?'],
  ],
  [
    'a function without brackets',
    'soil_gross - max',
    ['max'],
    ['max is a function; write its figures in brackets behind it, as in max(...).'],
  ],
  ['too few figures', 'round_to(soil_gross)', ['round_to(soil_gross)'], ['round_to takes 2 figures; you gave 1.']],
  ['too many figures', 'abs(soil_gross, edge_bead)', ['edge_bead'], ['abs takes 1 figure; you gave 2.']],
  [
    'wrong arguments, each at its place',
    'layer_volume(drainage, floor_area)',
    ['drainage', 'floor_area'],
    [
      'Area (inside floor) needs an area (m2, cm2, in2). You gave drainage, a length.',
      'Depth (depth of the layer) needs a length (mm, cm, in). You gave floor_area, an area.',
    ],
  ],
  [
    'a word that is no choice',
    'pick(kit, "basik", 1 L, "full", 2 L)',
    ['"basik"'],
    ['"basik" is none of the choices "basic", "full", "show". Did you mean "basic"?'],
  ],
  [
    'kinds that cannot be joined',
    'soil_gross - drainage',
    ['soil_gross - drainage'],
    ['Millimetres cannot be taken from litres. In soil_gross - drainage, both sides must be of one kind.'],
  ],
  [
    'a temperature multiplied',
    'soil_gross * room_summer',
    ['room_summer'],
    ['room_summer is a temperature and cannot be multiplied. Take the difference of two temperatures, or a step in K.'],
  ],
  [
    'a power that is no whole number',
    'soil_gross ^ 0.5',
    ['0.5'],
    ['0.5 cannot be a power here; a figure with a unit takes a whole number, as in ^ 2.'],
  ],
  [
    'a root of litres',
    'sqrt(soil_gross)',
    ['soil_gross'],
    ['soil_gross is a volume and has no square root; an area has one, a length.'],
  ],
  [
    'litres rounded like a plain figure',
    'roundup(soil_gross, 0)',
    ['soil_gross'],
    [
      'roundup rounds plain figures; soil_gross is a volume. Use round_to with a step, as in round_to(soil_gross, 1 L).',
    ],
  ],
  [
    'a plain figure wanted',
    'exp(soil_gross)',
    ['soil_gross'],
    ['exp takes plain figures; soil_gross is a volume. Divide it by one of its unit first.'],
  ],
  [
    'a yes or no wanted',
    'if(soil_gross, 1 L, 2 L)',
    ['soil_gross'],
    ['if asks for a yes or no, such as drainage > 40 mm. You gave soil_gross, a volume.'],
  ],
  [
    'a figure wanted',
    'soil_gross + public_site',
    ['public_site'],
    ['This works with figures. public_site is a yes or no; use if(...) or pick(...) to turn it into one.'],
  ],
  [
    'branches of two kinds',
    'if(public_site, 1 L, 2 mm)',
    ['2 mm'],
    ['if needs figures of one kind, not litres with millimetres. Change 2 mm.'],
  ],
  [
    'figures that do not go together',
    'plant_count(4 each/m2, drainage, 0)',
    ['plant_count(4 each/m2, drainage, 0)'],
    [
      'plant_count cannot work with a count per square metre and millimetres and a plain number together. Look it up in the Function book.',
    ],
  ],
  ['not of the line’s kind', 'drainage', ['drainage'], ['This line is a volume in L. drainage is a length.']],
];

/** The underlined texts, and the message below the field. */
function told(): Promise<{ readonly marked: readonly string[]; readonly says: readonly string[] }> {
  return page.locator('[popover="manual"]:has(textarea)').evaluate((editor) => {
    const runs: string[] = [];
    let before: Element | null = null;
    for (const piece of editor.querySelectorAll('span[data-fault="true"]')) {
      const wavy = getComputedStyle(piece).textDecorationStyle === 'wavy';
      const text = wavy ? (piece.textContent ?? '') : 'not underlined';
      if (before !== null && piece.previousElementSibling === before) runs.push((runs.pop() ?? '') + text);
      else runs.push(text);
      before = piece;
    }
    return { marked: runs, says: [...editor.querySelectorAll('p[data-fault]')].map((each) => each.textContent ?? '') };
  });
}

describe('a rule with each kind of fault', () => {
  beforeAll(async () => {
    await goTo(page, 'Soil, placed', 'T07');
    await page.keyboard.press('F2');
  });

  test.each(faults)('%s: underlined at its place while one types, and told below', async (_, rule, marked, says) => {
    await page.locator('[popover="manual"] textarea').fill(rule);
    expect(await told()).toEqual({ marked, says });
  });

  test('a rule of more than 2,000 characters is told to be so, and not cut off', async () => {
    const field = page.locator('[popover="manual"] textarea');
    await field.fill(`soil_gross + ${'0 L + '.repeat(400)}0 L`);
    const { says } = await told();
    expect(says).toEqual(['The rule has 2416 characters; 2000 is the most. Put part of it in a line of its own.']);
  });

  test('Enter takes none of them, a reader hears why, and Escape leaves the box as it was', async () => {
    const field = page.locator('[popover="manual"] textarea');
    await field.fill('sol_gross');
    await page.keyboard.press('Enter');
    const by = await field.getAttribute('aria-describedby');
    const heard = await page
      .locator(`[id="${by}"]`)
      .evaluate((each) => [each.getAttribute('aria-live'), each.textContent]);
    const invalid = await field.getAttribute('aria-invalid');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    expect([heard, invalid, await figures(page, 'Soil, placed', ['T07']), await quietLine(page)]).toEqual([
      ['polite', 'Soil, placed, T07: Nothing called sol_gross. Did you mean soil_gross?'],
      'true',
      ['41.31'],
      expect.stringContaining('Nothing to undo'),
    ]);
  });
});

describe('a ring', () => {
  test('is refused with the whole of it, in order', async () => {
    await write(page, ['Drainage depth', 'T07'], 'soil_front / 2');
    expect(await page.textContent('[popover="manual"] p[data-fault]')).toBe(
      'This box depends on itself: drainage -> soil_front -> drainage.',
    );
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    expect((await seenBox(page, 'Drainage depth', 'T07'))?.spoken).toBe('Drainage depth, T07, 40 mm, house rule');
  });

  test('a figure left out stops no other line', async () => {
    await goTo(page, 'Moisture at start', 'T07');
    await page.keyboard.press('F2');
    await page.locator('[popover="manual"] textarea').fill('');
    await page.keyboard.press('Enter');
    const boxes = await Promise.all(
      ['Moisture at start', 'Wetting water', 'Soil, placed'].map((line) => seenBox(page, line, 'T07')),
    );
    expect(boxes.map((box) => [box?.figure, box?.said])).toEqual([
      ['', 'needs a figure'],
      ['', 'waits on moisture at start'],
      ['41.31', ''],
    ]);
  });
});

describe('completion', () => {
  test('names come with unit and present figure, functions with how they are written; Enter takes one', async () => {
    await goTo(page, 'Soil at the front', 'T07');
    await page.keyboard.type('dam');
    const offers = (await page.locator('[role="option"]').allInnerTexts()).map(plain);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Tab');
    await page.keyboard.type(' - 2 * dra');
    const second = (await page.locator('[role="option"]').allInnerTexts()).map(plain);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    const text = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.press('Enter');
    await stored(page, 'soil at the front of T07 to dam_height - 2 * drainage');
    // 150 less twice 40.
    expect([offers[0], second[0], text, await figures(page, 'Soil at the front', ['T07'])]).toEqual([
      'dam_height Dam 150 mm',
      'drainage Drainage depth 40 mm',
      'dam_height - 2 * drainage',
      ['70'],
    ]);
  });

  test('within a function its arguments are told, and a choice offers its words as soon as it opens', async () => {
    await goTo(page, 'Soil at the front', 'T07');
    await page.keyboard.type('clamp(dam_height, 9');
    const hint = plain(await page.textContent('[popover="manual"] [aria-live="polite"] p:not([data-fault])'));
    await page.keyboard.press('Escape');
    await goTo(page, 'Kit', 'T07');
    await page.keyboard.press('F2');
    const words = (await page.locator('[role="option"]').allInnerTexts()).map(plain);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect([hint, words, (await seenBox(page, 'Kit', 'T07'))?.spoken]).toEqual([
      expect.stringMatching(/^clamp\(figure, low, high\) /),
      ['basic', 'full', 'show'],
      'Kit, T07, show, local choice',
    ]);
  });
});

noneComplained(pages);
