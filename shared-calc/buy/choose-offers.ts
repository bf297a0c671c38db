import { isBought } from './carriage.ts';
import { leastLanded, type Asked, type LandedQuestion } from './least-landed.ts';
import type { MaterialNeed } from './material-need.ts';
import type { Offer } from './offer.ts';
import type { PriceBook } from './price-book.ts';

/** Buying from any supplier, where there are several. */
export interface AnySupplier {
  /** Suppliers taken by hand, by material. */
  readonly from?: ReadonlyMap<string, string> | undefined;
  /** Also says what each offer comes to. */
  readonly compare: boolean;
}

export interface ChosenOffers {
  readonly needs: readonly MaterialNeed[];
  /** Nothing lands for less. */
  readonly proven: boolean;
}

/** For each material the need as each of its suppliers would meet it, the usual one first. */
type Options = readonly MaterialNeed[];

/** A supplier for each material, so that goods and carriage of all cost the least; by hand where that is asked. */
export function chooseOffers(
  all: readonly Options[],
  { suppliers }: PriceBook,
  { from, compare }: AnySupplier,
): ChosenOffers {
  const chosenHere = all.filter(isChoice);
  if (chosenHere.length === 0) return { needs: all.flatMap(([usual]) => usual ?? []), proven: true };
  const fixed = new Map<string, number>();
  for (const [usual] of all.filter((options) => !isChoice(options))) {
    if (usual?.supplier !== undefined && isBought(usual))
      fixed.set(usual.supplier, (fixed.get(usual.supplier) ?? 0) + usual.packsCoins);
  }
  const byHand = chosenHere.map((options) => handPick(options, from));
  const question: LandedQuestion = {
    fixed,
    choices: chosenHere.map((options, at) => askedOf(options, byHand[at])),
    terms: suppliers,
  };
  const { picks: found, proven } = leastLanded(question);
  const picks = found.map((pick, at) => byHand[at] ?? pick);
  const needs = new Map(
    chosenHere.flatMap((options, at) => {
      const taken = options[picks[at] ?? 0];
      if (!taken) return [];
      const offers = compare ? { offers: offersOf(at, { all: chosenHere, question, picks, suppliers }) } : {};
      return [[options, { ...taken, ...offers }] as const];
    }),
  );
  return { needs: all.flatMap((options) => needs.get(options) ?? options[0] ?? []), proven };
}

/** What the Store covers is bought from nobody. */
function isChoice(options: Options): boolean {
  return options.length > 1 && options.some(isBought);
}

function handPick(options: Options, from: AnySupplier['from']): number | undefined {
  const supplier = from?.get(options[0]?.material ?? '');
  const at = options.findIndex((need) => need.supplier === supplier);
  return supplier === undefined || at < 0 ? undefined : at;
}

function askedOf(options: Options, only: number | undefined): readonly Asked[] {
  const asked = options.map(({ supplier = '', packsCoins }) => ({ supplier, coins: packsCoins }));
  return only === undefined ? asked : asked.slice(only, only + 1);
}

interface Answered {
  readonly all: readonly Options[];
  readonly question: LandedQuestion;
  readonly picks: readonly number[];
  readonly suppliers: PriceBook['suppliers'];
}

/** The search for what another offer comes to stops early: it begins with a good answer, the one that was taken. */
const NODES_OF_ANOTHER = 5_000;

function offersOf(at: number, { all, question, picks, suppliers }: Answered): readonly Offer[] {
  const options = all[at] ?? [];
  const landed = options.map((_, only) => {
    const choices = question.choices.with(at, askedOf(options, only));
    return leastLanded({ ...question, choices, mostNodes: NODES_OF_ANOTHER }).coins;
  });
  const second = Math.min(...landed.filter((_, pick) => pick !== picks[at]));
  const secondAt = landed.findIndex((coins, pick) => pick !== picks[at] && coins === second);
  return options.map(({ supplier = '', packs, packsCoins }, pick) => ({
    supplier,
    name: suppliers.get(supplier)?.name ?? supplier,
    packs,
    coins: packsCoins,
    landedCoins: landed[pick] ?? 0,
    taken: pick === picks[at],
    secondBest: pick === secondAt,
  }));
}
