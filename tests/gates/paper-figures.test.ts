import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

/*
 * No paper says a literal figure that a line of the recipe or the table of heat targets has: it would stay as it is
 * when the line is changed. Every figure with a unit in the texts of papers and cautions is on the list below, with
 * the reason why no line has it.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const figure =
  /\d+(?:[.,]\d+)*(?: (?:to|or) \d+(?:[.,]\d+)*)?[ \u00a0](?:°[CF]|deg[CF]|C\b|mm|kg|kPa|psi|mL|L\b|min\b|h\b|d\b|days|mA|mS\/cm|%|g\b|K\b)/g;

const fromElsewhere: Readonly<Record<string, string>> = {
  '28 days': 'how long new animals are looked at daily; no line is about it',
  '24 to 72 h': 'LEAST_WATCH and FULL_WATCH of the watch',
  '30 mA': 'standard of residual-current switches',
  '16 h': 'how long leaves are moistened before a bake',
  '0.5 mS/cm': 'salt of washed coir',
  '5 %': 'worm casts in a mix; growth of slow springtails',
  '10 min': 'venting of a pressure vessel, USDA',
  '28 to 30 days': 'how long insecticide dips act',
  '14 days': 'common practice for cans of mist water',
  '20 to 45 degC': 'growth of Legionella, public guidance',
  '1 mm': 'screens against flies',
  '2 mm': 'gaps against frogs and flies',
  '30 days': 'quarantine of animals, not of plants',
  '18 to 24 degC': 'transport of animals, by the carrier',
  '60 degC': 'death of chytrid',
  '100 %': 'bound of humidity',
  '8 to 29 g': 'densities of leaf litter that were measured in the woods',
};

describe('figures in the texts of papers', () => {
  test('are those that no line and no table has', () => {
    const found = sources().flatMap((file) => [...uncommented(file).matchAll(figure)].map(([each]) => each));
    expect(found.length).toBeGreaterThan(10);
    expect([...new Set(found)].filter((each) => fromElsewhere[each] === undefined)).toEqual([]);
  });

  test('that were mended are found, should they come back', () => {
    const texts = ['Above 27 to 28 degC act', 'Above 29 °C is an emergency', 'Bake attended, at 120 C or less.'];
    expect(texts.flatMap((text) => [...text.matchAll(figure)].map(([each]) => each))).toEqual([
      '27 to 28 degC',
      '29 °C',
      '120 C',
    ]);
  });
});

function uncommented(file: string): string {
  return readFileSync(file, 'utf8').replaceAll(/\/\*[^]*?\*\/|^\s*\/\/.*$/gm, '');
}

/** Papers, their painter on the page, and every text of cautions. */
function sources(): readonly string[] {
  const files = ['shared-calc/prepare/heat-words.ts'];
  const folders = ['shared-calc/cautions', 'shared-calc/papers', 'renderer/print'];
  return [
    ...files,
    'shared-calc/trade/heat/treatment-warnings.ts',
    ...folders.flatMap((folder) =>
      readdirSync(path.join(root, folder))
        .filter((name) => /\.tsx?$/.test(name))
        .map((name) => path.join(folder, name)),
    ),
  ].map((file) => path.join(root, file));
}
