import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import { replaceInRule } from '#shared-calc/rule/rename-line.ts';
import { nameOfLabel } from './name-of-label.ts';
import { patternIngredients, patternLines } from './pattern.ts';
import { withoutPlace } from './without-place.ts';
import { recipeParts, type RecipeAnswers, type RecipePart } from './recipe-answers.ts';

/** The line that an ingredient of one's own brings a material for; its material is made with the recipe. */
export interface OwnGoods {
  readonly line: string;
  readonly label: string;
}

export interface AnsweredRecipe {
  /** In order; their ids and places in the list are those of the pattern. */
  readonly lines: readonly Line[];
  readonly ownGoods: readonly OwnGoods[];
}

/**
 * The lines of a recipe that has what the answers say, taken from the pattern. A rule counts what is not chosen as
 * nothing; a check that minds it is left out. Figures that nobody gave need one.
 */
export function recipeOfAnswers(answers: RecipeAnswers): AnsweredRecipe {
  const mix = answers.soil === false ? [] : ingredientsOf(answers);
  const chosen = new Set(recipeParts.filter((part) => answers[part] !== false));
  const all = patternLines();
  const kept = all.filter((line) => partsOf(line).every((part) => chosen.has(part)) && !isIngredient(line));
  const mixed = new Set(mix.flatMap(({ lines: own }) => own.map(({ name }) => name)));
  const gone = new Map(
    all.filter((line) => !kept.includes(line) && !mixed.has(line.name)).map((line) => [line.name, nothingOf(line)]),
  );
  const answered = kept
    .filter((line) => line.role !== 'check' || !readsAny(line, gone))
    .map((line) => withAnswer(asPractice(withoutPlace(line)), answers, mix))
    .map((line) => ({ ...line, text: withoutZeros(replaceInRule(line.text, (name) => gone.get(name))) }));
  const before = answered.findIndex(({ name }) => name === 'mix_parts');
  const parts = mix.flatMap((each) => each.lines.filter(({ role }) => role === 'given'));
  const needs = mix.flatMap((each) => each.lines.filter(({ role }) => role === 'need'));
  const lines =
    before < 0
      ? answered
      : [
          ...answered.slice(0, before),
          ...parts,
          ...answered.slice(before, before + 1),
          ...needs,
          ...answered.slice(before + 1),
        ];
  return { lines, ownGoods: mix.flatMap(({ own }) => own ?? []) };
}

const belongs: readonly (readonly [RegExp, readonly RecipePart[]])[] = [
  [/^mesh_/, ['mesh']],
  [/^(?:drainage|drain_|water_mass$)/, ['drainage']],
  [/^(?:capping|bead_|edge_bead)/, ['capping']],
  [
    /^(?:soil_|mix_|moisture_|blend_|inocul|buried_|freeboard|wetting$|panel_(?:buried|thickness|displaced)$)/,
    ['soil'],
  ],
  [/^(?:litter|leaves_|cover_after_year$|leaf_(?:sheet|layers|vessel|fill)$)/, ['litter']],
  [/^litter_over_dam$/, ['soil']],
  [/^(?:panel|sealant_|epiphyte_need$)/, ['background']],
  [/^(?:branches_|tubes_|pods_|pieces$|hardscape_)/, ['hardscape']],
  [/^(?:plant_|plants$|leaf_each$|ground_need$|mid_need$|feature_need$|climber_need$|epiphyte_need$)/, ['plants']],
  [/^(?:springtail|isopod|microfauna_)/, ['microfauna']],
  [/^(?:lamp|screen_under_|light_|timer_)/, ['light']],
  [/^(?:nozzle|rated_|pump_pressure$|mist|reservoir$|refill_days$|fan_need$)/, ['mist']],
];

function partsOf({ name, role }: Line): readonly RecipePart[] {
  return role === 'check' ? [] : belongs.flatMap(([names, parts]) => (names.test(name) ? parts : []));
}

function isIngredient({ name }: Line): boolean {
  return patternIngredients().some(({ parts, need }) => name === parts.name || name === need.name);
}

/** What a rule reads in place of a line that is not there. */
function nothingOf({ unit, options = [] }: Line): string {
  if (unit === 'yes_no') return 'no';
  if (unit === 'choice') return `"${options[0] ?? 'none'}"`;
  return unit === 'number' ? '0' : `0 ${unit}`;
}

function readsAny({ text, says = '' }: Line, names: ReadonlyMap<string, unknown>): boolean {
  const rule = readRule(text);
  const read = rule.ok ? namesIn(rule.value) : [];
  return [...read, ...[...says.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name)].some((name) => names.has(name));
}

/** A sum without the parts that are nothing. */
function withoutZeros(text: string): string {
  return text.replaceAll(/\bsum\(([^()]*)\)/g, (_, inside: string) => {
    const parts = inside.split(',').map((each) => each.trim());
    const some = parts.filter((each) => !/^0(?: |$)/.test(each));
    return some.length === 0 ? (parts[0] ?? '0') : `sum(${some.join(', ')})`;
  });
}

const ofSpecies: ReadonlySet<UseName | undefined> = new Set([
  'speciesCeiling',
  'speciesFloor',
  'bandLow',
  'bandHigh',
  'dipAllowed',
] as const);

type Answered = (line: Line, answers: RecipeAnswers, mix: readonly Mixed[]) => Line;

/** The lines that an answer writes, by name. */
const answeredLines: Readonly<Record<string, Answered>> = {
  drainage: (line, { drainage }) => givenLine(line, depthOf(drainage)),
  capping: (line, { capping }) => givenLine(line, depthOf(capping)),
  litter: (line, { litter }) => givenLine(line, depthOf(litter)),
  soil_front: (line, { soil }) => (typeof soil === 'string' ? givenLine(line, soil) : line),
  stack_fits: (line, { soil }) =>
    typeof soil === 'string'
      ? { ...line, text: 'soil_front <= dam_room(dam_height, drainage, mesh_thickness, capping, freeboard)' }
      : line,
  mix_parts: (line, _answers, mix) => ({ ...line, text: `sum(${mix.map(({ name }) => `${name}_parts`).join(', ')})` }),
  mix_dry: (line, _answers, mix) => {
    return { ...line, text: `(${mix.map(massOf).join(' + ')}) / mix_parts / (1 - blend_shrink) / (1 - mix_settle)` };
  },
};

/** The line as the person answered it. */
function withAnswer(line: Line, answers: RecipeAnswers, mix: readonly Mixed[]): Line {
  if (ofSpecies.has(line.use)) return givenLine(line, '');
  return answeredLines[line.name]?.(line, answers, mix) ?? line;
}

function depthOf(answer: boolean | string): string {
  return typeof answer === 'string' ? answer : '';
}

function givenLine(from: Line, text: string): Line {
  const { least: _least, most: _most, cases: _cases, source: _source, sourceNote: _sourceNote, ...line } = from;
  return { ...line, role: 'given', text, ...(text !== '' && { source: 'house' as const }) };
}

/** What the program brings is common practice, until somebody makes it their own. */
function asPractice(line: Line): Line {
  return line.source === 'house' ? { ...line, source: 'practice', sourceNote: 'as the program brings it' } : line;
}

interface Mixed {
  readonly name: string;
  /** Dry, as a figure or the name of a line. */
  readonly kgPerL: string;
  readonly lines: readonly Line[];
  readonly own?: OwnGoods;
}

function massOf({ name, kgPerL }: Mixed): string {
  return `${name}_parts * ${kgPerL}`;
}

function ingredientsOf({ mix }: RecipeAnswers): readonly Mixed[] {
  const asked: RecipeAnswers['mix'] = mix.length === 0 ? [{ what: 'Soil' }] : mix;
  const taken = new Set(patternLines().map(({ name }) => name));
  const mixed = asked.map(
    ({ what, parts = '' }) => knownIngredient(what, String(parts)) ?? ownIngredient(what, String(parts), taken),
  );
  return [...new Map(mixed.map((each) => [each.name, each])).values()];
}

function knownIngredient(what: string, text: string): Mixed | undefined {
  const known = patternIngredients().find(({ name, need }) => [name, need.label].includes(what));
  if (!known) return undefined;
  const { name, kgPerL, need } = known;
  return { name, kgPerL, lines: [givenLine(known.parts, text), asPractice(need)] };
}

/** An ingredient that the pattern does not know: its weight needs a figure, its material is made. */
function ownIngredient(label: string, text: string, taken: Set<string>): Mixed {
  const [first] = patternIngredients();
  if (!first) throw new Error('the pattern mixes nothing');
  const name = freeName(label, taken);
  const parts = givenLine({ ...first.parts, name: `${name}_parts`, label: `${label}, parts` }, text);
  const density = givenLine(
    { ...first.parts, name: `${name}_density`, label: `${label}, dry`, unit: 'kg/L', shownFirst: false },
    '',
  );
  const { use: _, material: _material, ...need } = first.need;
  const line: Line = {
    ...need,
    name: `${name}_need`,
    label,
    text: `mix_part(mix_loose, ${name}_parts, mix_parts, blend_shrink)`,
  };
  return { name, kgPerL: density.name, lines: [parts, density, line], own: { line: line.name, label } };
}

/** A name for an ingredient, none of whose lines' names is taken. */
function freeName(label: string, taken: Set<string>): string {
  const names = (name: string) => ['', '_parts', '_need', '_density'].map((behind) => `${name}${behind}`);
  const name = nameOfLabel(label, (each) => names(each).some((one) => taken.has(one)));
  for (const each of names(name)) taken.add(each);
  return name;
}
