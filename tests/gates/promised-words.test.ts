import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

/*
 * The program promises nothing about health, law or structure. Every sentence of the sources and the demo is read;
 * each one with one of these words must be on the list below, because it warns or names a thing.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const promises =
  /\b(?:safe|safely|safety|sterile|sterilis\w+|legal|legally|lawful|guarantee\w*|harmless|fool-?proof|beginner-proof|self-cleaning|maintenance-free)\b/i;

/** The usage of commands that take the aim of a treatment as the builder's own word. */
const namesAims = /^(?:treat --leaves|paper KIND) /;

const warnsOrNames: ReadonlySet<string> = new Set([
  'Building water-safety person',
  'Clean is enough: a living tank is not sterile, and a bake does not sterilise.',
  'Keeper; building water-safety person if the place is public',
  "Never promise 'sterile' on a quote.",
  'Pond-safe foam 750 mL',
  'Say what for: --aim clean, or --aim sterile.',
  'Water to its mark, looked at every batch. Dial gauge checked yearly; a hardened safety plug is replaced.',
  'Workshop safety lead',
  'Leaves are treated by heat. Clean is enough: a living tank is not sterile, and a bake does not sterilise. What aims at more needs steam under pressure and a core probe.',
  'clean and sterile',
  'clean, or sterile',
  'clean is enough: a living tank is not sterile',
  'steam, sterile, 43.51 L, vessel 21 L, fill 0.6, 650 m, 15 psi',
  'sterile, by steam only',
  'The core reaches … degC; sterile asks for … (15 psi at this height gives …; the least here is … psi).',
  'way (steam, boil or bake), aim (clean or sterile), litres of leaves, vessel, fill, altitude, gauge or oven',
  '… cleans and does not sterilise; only pressure steam does.',
]);

describe('words that promise', () => {
  test('stand in no sentence but those that warn, or name a thing', () => {
    const found = new Set(sources().flatMap((file) => sentencesOf(file).filter((each) => promises.test(each))));
    expect([...found].filter((each) => !warnsOrNames.has(each) && !namesAims.test(each))).toEqual([]);
  });

  test('a sentence in any sort of quotes, and on a line of the page by itself, is read', () => {
    const text = [
      "const a = 'is it safe';",
      'const b = "is it \'legal\'";',
      'const c = `quite sterile`;',
      '  Guaranteed for a year',
      '<p>harmless it is</p>',
    ];
    expect(text.flatMap(sentencesIn).filter((each) => promises.test(each)).length).toBe(5);
  });
});

function sources(): readonly string[] {
  return ['shared-calc', 'renderer', 'electron', 'fixtures/demo'].flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(?:tsx?|json)$/.test(entry.name))
      .map((entry) => path.join(entry.parentPath, entry.name))
      .filter((file) => !file.includes(`${path.sep}dist${path.sep}`)),
  );
}

function sentencesOf(file: string): readonly string[] {
  return sentencesIn(readFileSync(file, 'utf8'));
}

/** Texts of two words or more in quotes, between tags, or on a line of their own; users do not see comments. */
function sentencesIn(text: string): readonly string[] {
  const code = text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/(^|\s)\/\/.*$/gm, '');
  const said =
    /'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`|>([^<>{}=;]+)<|^\s+([A-Z][^;={}()<>]*)$/gm;
  return [...code.matchAll(said)]
    .map((match) => match.slice(1).find((each) => each !== undefined) ?? '')
    .map((each) =>
      each
        .replaceAll(/\$\{[^}]*\}/g, '…')
        .replaceAll("\\'", "'")
        .trim(),
    )
    .filter((each) => /\s/.test(each));
}
