import { carriageOf, type CarriageTerms } from './carriage.ts';

/** What one supplier asks for one of the materials, in coins. */
export interface Asked {
  readonly supplier: string;
  readonly coins: number;
}

export interface LandedQuestion {
  /** Goods that only one supplier sells, in coins by supplier. */
  readonly fixed: ReadonlyMap<string, number>;
  /** For each material who sells it, the usual supplier first. */
  readonly choices: readonly (readonly Asked[])[];
  readonly terms: ReadonlyMap<string, CarriageTerms>;
  readonly mostNodes?: number;
}

export interface LeastLanded {
  /** For each material the index of the taken one. */
  readonly picks: readonly number[];
  /** Goods and the carriage of all suppliers. */
  readonly coins: number;
  /** Nothing lands for less; else it is the best that was found. */
  readonly proven: boolean;
}

const MOST_NODES = 100_000;

interface Found {
  readonly picks: readonly number[];
  readonly coins: number;
  /** How many are not from the usual supplier; of equal sums the one with the fewest is taken. */
  readonly strange: number;
}

/**
 * One supplier for each material, so that goods and carriage together cost the least; on a tie the usual ones. Branch
 * and bound over the materials, those first whose suppliers differ most.
 */
export function leastLanded(question: LandedQuestion): LeastLanded {
  const { choices, mostNodes = MOST_NODES } = question;
  const order = choices.map((_, at) => at).toSorted((one, other) => spread(choices[other]) - spread(choices[one]));
  let best = firstFound(question);
  let nodes = 0;
  const picks = choices.map(() => 0);
  const visit = (depth: number, open: OpenSums, strange: number): void => {
    if (nodes >= mostNodes || isWorse(open.atLeast(), strange, best)) return;
    const at = order[depth];
    if (at === undefined) {
      best = { picks: [...picks], coins: open.atLeast(), strange };
      return;
    }
    for (const [pick, asked] of (choices[at] ?? []).entries()) {
      nodes += 1;
      picks[at] = pick;
      open.take(at, asked);
      visit(depth + 1, open, strange + Number(pick > 0));
      open.leave(at, asked);
    }
  };
  visit(0, openSums(question), 0);
  return { picks: best.picks, coins: best.coins, proven: nodes < mostNodes };
}

/** Goods and carriage of some picks. */
function landedOf({ fixed, choices, terms }: LandedQuestion, picks: readonly number[]): number {
  const goods = new Map(fixed);
  for (const [at, pick] of picks.entries()) {
    const asked = choices[at]?.[pick];
    if (asked) goods.set(asked.supplier, (goods.get(asked.supplier) ?? 0) + asked.coins);
  }
  let sum = 0;
  for (const [supplier, coins] of goods) sum += coins + carriage(terms, supplier, coins);
  return sum;
}

function carriage(terms: LandedQuestion['terms'], supplier: string, coins: number): number {
  const of = terms.get(supplier);
  return of ? carriageOf(coins, of) : 0;
}

function isWorse(coins: number, strange: number, than: Found): boolean {
  return coins > than.coins || (coins === than.coins && strange >= than.strange);
}

/** A good answer to begin with: the better of all usual and all cheapest, mended one material at a time. */
function firstFound(question: LandedQuestion): Found {
  const { choices } = question;
  const usual = mended(
    question,
    choices.map(() => 0),
  );
  const cheapest = mended(question, choices.map(leastAt));
  return isWorse(cheapest.coins, cheapest.strange, usual) ? usual : cheapest;
}

function mended(question: LandedQuestion, start: readonly number[]): Found {
  let best = foundOf(question, start);
  for (let next = mendedOnce(question, best); next !== best; next = mendedOnce(question, best)) best = next;
  return best;
}

function mendedOnce(question: LandedQuestion, start: Found): Found {
  let best = start;
  const others = question.choices.flatMap((some, at) => [...some.keys()].map((pick) => [at, pick] as const));
  for (const [at, pick] of others) {
    const next = foundOf(question, best.picks.with(at, pick));
    if (!isWorse(next.coins, next.strange, best)) best = next;
  }
  return best;
}

function foundOf(question: LandedQuestion, picks: readonly number[]): Found {
  return { picks, coins: landedOf(question, picks), strange: picks.filter((pick) => pick > 0).length };
}

function spread(some: readonly Asked[] = []): number {
  const coins = some.map((asked) => asked.coins);
  return Math.max(...coins) - Math.min(...coins);
}

function leastAt(some: readonly Asked[]): number {
  const coins = some.map((asked) => asked.coins);
  return coins.indexOf(Math.min(...coins));
}

interface OpenSums {
  readonly take: (at: number, asked: Asked) => void;
  readonly leave: (at: number, asked: Asked) => void;
  /**
   * No answer that keeps what is taken lands for less: the rest at its cheapest, and the carriage of suppliers that are
   * used already and could not come to free carriage even if they got all the rest.
   */
  readonly atLeast: () => number;
}

interface Account {
  coins: number;
  /** How many materials come from here; goods may cost nothing. */
  used: number;
  /** What all the rest that is sold here would cost here. */
  open: number;
}

function openSums({ fixed, choices, terms }: LandedQuestion): OpenSums {
  const accounts = new Map<string, Account>();
  const accountOf = (supplier: string) => {
    const account = accounts.get(supplier) ?? { coins: 0, used: 0, open: 0 };
    accounts.set(supplier, account);
    return account;
  };
  for (const [supplier, coins] of fixed) Object.assign(accountOf(supplier), { coins, used: 1 });
  for (const { supplier, coins } of choices.flat()) accountOf(supplier).open += coins;
  const least = choices.map((some) => Math.min(...some.map(({ coins }) => coins)));
  let rest = least.reduce((sum, coins) => sum + coins, 0);
  const move = (at: number, { supplier, coins }: Asked, by: 1 | -1) => {
    for (const each of choices[at] ?? []) accountOf(each.supplier).open -= by * each.coins;
    const account = accountOf(supplier);
    account.coins += by * coins;
    account.used += by;
    rest -= by * (least[at] ?? 0);
  };
  return {
    take: (at, asked) => move(at, asked, 1),
    leave: (at, asked) => move(at, asked, -1),
    atLeast: () => {
      let sum = rest;
      for (const [supplier, { coins, used, open }] of accounts) {
        if (used > 0) sum += coins + carriage(terms, supplier, coins + open);
      }
      return sum;
    },
  };
}
