import { describe, expect, test } from 'vitest';
import {
  buildActs,
  careActs,
  cultureActs,
  paperActs,
  prepActs,
  siteActs,
  storeActs,
  treatActs,
  type HazardousAct,
} from '#shared-calc/cautions/acts.ts';
import { cautionEntry, cautionIds, type CautionId } from '#shared-calc/cautions/all-cautions.ts';
import { hazards } from '#shared-calc/cautions/hazards.ts';
import { answersToMind } from '#shared-calc/jobs/survey-cautions.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { paperKinds } from '#shared-calc/papers/all-papers.ts';
import { cautionsIn, type PaperDocument } from '#shared-calc/papers/document.ts';
import { jobPaperInput } from '#shared-calc/papers/paper-input.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { careWords, stepWords } from '#shared-calc/papers/step-words.ts';
import { buildSteps } from '#shared-calc/papers/build-steps.ts';
import { linePlaces } from '#shared-calc/fields/uses.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { treatmentWays } from '#shared-calc/trade/heat/leaf-treatment.ts';

/*
 * Every act of the program says what can hurt in it, and has a caution against each of these. An act that declares too
 * little is caught by its own words: heat, water, glass and dust are named in what it asks for.
 */

const lists: Readonly<Record<string, Readonly<Record<string, HazardousAct>>>> = {
  build: buildActs,
  prep: prepActs,
  treat: treatActs,
  site: siteActs,
  care: careActs,
  culture: cultureActs,
  store: storeActs,
  paper: paperActs,
};

const acts = Object.entries(lists).flatMap(([list, some]) =>
  Object.entries(some).map(([name, act]) => ({ act: `${list}, ${name}`, ...act })),
);

function idsOf({ cautions }: HazardousAct): readonly CautionId[] {
  return cautions.map((each) => (typeof each === 'string' ? each : each.id));
}

/** The hazards of an act that none of its cautions is against. */
function uncautioned(act: HazardousAct): readonly string[] {
  const against = new Set(idsOf(act).flatMap((id) => cautionEntry(id).against));
  return act.hazards.filter((hazard) => !against.has(hazard));
}

describe('cautions of every act', () => {
  test.each(acts)('$act has a caution against each of its hazards', (act) => {
    expect(uncautioned(act)).toEqual([]);
  });

  test('an act without a caution against boiling water is refused', () => {
    const bad: HazardousAct = { hazards: ['boiling water', 'lifting'], cautions: ['cleanIsEnough', 'lifting'] };
    expect(uncautioned(bad)).toEqual(['boiling water']);
  });

  test('every hazard is declared by an act, and every caution against one stands at an act or a function', () => {
    expect(hazards.filter((hazard) => !acts.some((act) => act.hazards.includes(hazard)))).toEqual([]);
    const said = new Set([...acts.flatMap(idsOf), ...tradeFunctions.flatMap(({ cautions = [] }) => cautions)]);
    expect(cautionIds.filter((id) => !said.has(id) && !cautionEntry(id).uses && !ofPeople.has(id))).toEqual([]);
  });
});

/** Said where the job tells of such people, animals or places. */
const ofPeople: ReadonlySet<CautionId> = new Set<CautionId>([
  'underFivesNotAsked',
  'weakImmunityNotAsked',
  'underFivesHere',
  'weakImmunityHere',
  'askAuthority',
  ...answersToMind.map(([, , id]) => id),
]);

describe('acts that the program knows', () => {
  test('every step of a build, prep plan, treatment and care has its act', () => {
    expect(buildSteps.map(({ act }) => act).filter((act) => !(act in buildActs))).toEqual([]);
    expect(linePlaces.filter((place) => !(place in buildActs) || !(place in storeActs))).toEqual([]);
    expect(Object.keys(stepWords).filter((step) => !(step in prepActs))).toEqual([]);
    expect(treatmentWays.filter((way) => !(way in treatActs))).toEqual([]);
    expect(Object.keys(careWords).length).toBeGreaterThan(0);
  });

  /** What the words of a step give away, whatever it declares. */
  const tells: readonly (readonly [words: RegExp, hazard: (typeof hazards)[number]])[] = [
    [/\bglue\b|\bsealant\b|\bfoam\b/i, 'sealant'],
    [/\blamps?\b.*\bcable|nozzles/i, 'electricity near water'],
    [/\bpanes?\b|\bglass and seams\b|^Cut \{mesh/i, 'sharp edges'],
    [/\bdust\b|\bclay\b/i, 'dust'],
    [/\bdrive\b|\bload\b/i, 'road'],
    [/\bheavy pieces\b/i, 'heavy pieces'],
    [/leaks with water/i, 'standing water'],
    [/\bisopods\b|\bspringtails\b/i, 'animals'],
  ];

  test.each(buildSteps.map((step) => [step.title, step] as const))('%s declares what its words tell', (_, step) => {
    expect(untold(step)).toEqual([]);
  });

  test('a step that is silent about its glue is refused', () => {
    expect(untold({ title: 'Background', says: ['Glue {panelArea} of background.'], act: 'besides' })).toEqual([
      'sealant',
    ]);
  });

  function untold({
    title,
    says,
    act,
  }: Pick<(typeof buildSteps)[number], 'title' | 'says' | 'act'>): readonly string[] {
    const words = [title, ...says.map((each) => (typeof each === 'string' ? each : each.says))];
    const declared: readonly string[] = buildActs[act].hazards;
    return tells
      .filter(([told, hazard]) => words.some((each) => told.test(each)) && !declared.includes(hazard))
      .map(([, hazard]) => hazard);
  }
});

describe('papers', () => {
  test('every paper has its hazards, but labels and the sheet of checks', () => {
    const silent = paperKinds.filter((kind) => kind.hazards.length === 0).map(({ kind }) => kind);
    expect(silent).toEqual(['labels', 'checks']);
    const own = new Map(paperKinds.map(({ kind, hazards: declared }) => [kind, declared]));
    expect(Object.entries(paperActs).filter(([kind, act]) => own.get(kind) !== act.hazards)).toEqual([]);
  });

  test.each(['quote', 'options', 'inside'] as const)('what a client reads on the %s is for clients', (kind) => {
    expect(idsOf(paperActs[kind]).filter((id) => !cautionEntry(id).onQuote)).toEqual([]);
    const ids = cautionsIn(made(kind)).flatMap(({ id }) => id ?? []);
    expect(ids.filter((id) => !cautionEntry(id).onQuote)).toEqual([]);
  });

  const records = demoRecords();
  const derived = derive(records, '2027-03-08');
  const input = jobPaperInput(derived, 'J01');

  test.each(paperKinds.filter((kind) => kind.hazards.length > 0).map((kind) => [kind.kind, kind] as const))(
    '%s of a job has a caution against each hazard of its acts',
    (kind, { hazards: declared }) => {
      const cautions = cautionsIn(made(kind));
      const ids = cautions.flatMap(({ id }) => id ?? []);
      const against = new Set(ids.flatMap((id) => cautionEntry(id).against));
      expect([...new Set(declared)].filter((hazard) => !against.has(hazard))).toEqual([]);
      expect(cautions.filter(({ decides }) => decides === '')).toEqual([]);
    },
  );

  function made(kind: string): PaperDocument {
    const paper = input && paperKinds.find((each) => each.kind === kind)?.make(input);
    if (!paper?.ok) throw new Error(`no ${kind} of J01`);
    return paper.value.document;
  }
});

describe('functions of the trade', () => {
  /** Physics without an act: nobody is burnt by working out the pressure of air. */
  const physics = ['air_pressure', 'kill_rate'];

  test.each([
    ['heat', ['heat', 'boiling water', 'steam under pressure']],
    ['mass', ['lifting']],
  ] as const)('each of %s is cautioned for it', (group, wanted) => {
    const silent = tradeFunctions
      .filter((each) => each.group === group && !physics.includes(each.name))
      .filter(
        ({ cautions = [] }) =>
          !cautions.some((id) => cautionEntry(id).against.some((hazard) => wanted.some((each) => each === hazard))),
      );
    expect(silent.map(({ name }) => name)).toEqual([]);
  });
});
