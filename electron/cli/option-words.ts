/** What an option is for, and a value as it is typed; a flag has none. */
interface OptionWords {
  readonly says: string;
  readonly as?: string;
}

function takes(as: string, says: string): OptionWords {
  return { says, as };
}

function flag(says: string): OptionWords {
  return { says };
}

const readings = '"21 degC"';

/** Options by name; one that means another thing for a command stands under `COMMAND OPTION`. */
const words: Readonly<Record<string, OptionWords>> = {
  active: takes('yes', 'whether the animals are active'),
  'recipe new title': takes('"Dry planted"', 'what the recipe is called'),
  answers: takes('JSON', 'layers, depths, mix and fittings; - reads them from standard input'),
  'recipe fork title': takes('"Dry planted"', 'what the recipe is called; as its parent if left out'),
  'recipe fork animals': takes('A3', 'the kind of animal that it is for'),
  'recipe fork tanks': takes('T01,T02', 'the tanks that it is for'),
  'recipe fork season': takes('10-01..03-31', 'the part of the year that it is for'),
  'recipe take tanks': takes('stay|take', 'whether figures for some tanks alone stay, the usual, or go too'),
  'recipe send tanks': takes(
    'stay|same|all',
    'figures for some tanks alone stay, go up for the same tanks, or for all',
  ),
  'recipe send of': takes('T01', 'with --tanks all: the tank whose figure goes up'),
  'recipe take keep': flag('the recipe keeps what it has, and the change of its parent counts as seen'),
  aim: takes('clean', 'clean, or sterile'),
  altitude: takes('"650 m"', 'where the leaves are treated; the workshop’s own if left out'),
  anyway: takes('"the shelf was changed"', 'why it is done although something stands against it'),
  'as-issued': flag('the job is worked as the quote was issued, not as the house is now'),
  basis: takes('packs', 'materials at what is used, or at every pack bought'),
  best: takes('2027-09-30', 'the best-before day'),
  bom: flag('begins the list with a byte-order mark, for programs that ask for one'),
  book: takes('FILE', 'the book; your own if left out'),
  builds: takes('builds.csv', 'a list of builds that want animals'),
  by: takes('client', 'who asked for it: client or us'),
  client: takes('"Library"', 'the client’s name'),
  columns: takes('columns.csv', 'the columns of the list'),
  csv: flag('gives a list in place of a table'),
  days: takes('14', 'how many days on'),
  deaths: takes('0', 'animals that died'),
  degC: takes('"22 degC"', 'the warmth the tub stands in'),
  deposit: takes('2026-12-01', 'the day the deposit is in'),
  drained: takes('"1.2 L"', 'how much water was drained'),
  eating: takes('yes', 'whether the animals eat'),
  ends: flag('the step is over, and its job moves on'),
  facts: takes('facts.csv', 'what is known of the days already'),
  fill: takes('0.6', 'how full the vessel is'),
  flies: takes('200', 'flies wanted a week'),
  founders: takes('1250', 'animals the tub is begun with'),
  from: takes('2026-12-01', 'from which day on'),
  'house propose from': takes('J05', 'the job it was learned from'),
  'tub start from': takes('K1', 'the tub they come from'),
  gauge: takes('"15 psi"', 'the pressure on the gauge'),
  got: takes('5.00', 'what was paid for it'),
  salvage: flag('makes a new book of what the damaged file still gives'),
  accept: flag('the book is taken as it stands, although checksums or journal say otherwise'),
  guesses: flag('the demo’s prices stand in as guesses; no quote is issued with them'),
  handover: takes('2027-04-28', 'the day the tank is handed over'),
  high: takes(readings, 'the highest temperature that was read'),
  'high-humidity': takes('92', 'the highest humidity that was read, %'),
  inside: flag('the sheet for us alone beside it'),
  issue: flag('freezes the quote under its number'),
  job: takes('J02', 'the job'),
  jobs: takes('J02,J03', 'the jobs'),
  json: flag('gives one JSON value in place of a table'),
  help: flag('shows this'),
  kind: takes('C1', 'the kind of culture'),
  kit: takes('full', 'the kit level: basic, full or show'),
  leaves: takes('"43.51 L"', 'the leaves, loose'),
  lines: takes('soil_front,drainage_need', 'only these lines'),
  'order in lines': takes('1=1@32.00', 'line, packs that came, and what each cost'),
  low: takes(readings, 'the lowest temperature that was read'),
  'low-humidity': takes('78', 'the lowest humidity that was read, %'),
  map: takes('map.json', 'how the columns and articles of the file are read'),
  materials: takes('M01,M04', 'only these materials'),
  minutes: takes('90', 'how long it took'),
  moistened: flag('the leaves were moistened 16 hours before'),
  name: takes('Mara', 'who did it'),
  'no-browser': flag('opens no browser'),
  note: takes('"a bag was torn"', 'a note'),
  on: takes('2027-03-08', 'the day it is looked at or done; today if left out'),
  open: flag('only orders that are open'),
  'treat open': flag('the tray in the oven is uncovered'),
  order: takes('O-0001', 'the order'),
  oven: takes('"105 degC"', 'the warmth of the oven'),
  paid: takes('31.50', 'what was paid for it'),
  plants: takes('0', 'plants that failed'),
  port: takes('8080', 'the port of the address'),
  power: takes('"1.5 kW"', 'the power of the heater'),
  prices: takes('today', 'prices of today for a job that is sold'),
  quote: takes('Q-0001A', 'an issued quote'),
  recipe: takes('H1', 'the house recipe'),
  set: takes('"T07.litter=20 mm"', 'writes a line over, for one size or for all; may be given again'),
  size: takes('T07', 'one size of the job'),
  sizes: takes('T03,T07x2', 'the tanks, with how many of each'),
  sold: flag('they were sold'),
  start: takes('full', 'what the book begins with'),
  step: takes('panel', 'the step that was done'),
  stock: takes('stock.csv', 'what lies there, in place of the store'),
  supplier: takes('S-hollin', 'the supplier'),
  suppliers: takes('S-hollin', 'only these suppliers'),
  title: takes('"Library"', 'what the job is called'),
  try: flag('shows what it would do, and writes nothing'),
  tub: takes('K1', 'the tub'),
  tubs: takes('tubs.csv', 'tubs that stand, in place of those of the book'),
  until: takes('2027-01-10', 'in quarantine until this day'),
  use: takes('2027-04-07', 'the day on which it is used'),
  vessel: takes('"21 L"', 'the vessel'),
  water: takes('"3 L"', 'the water in it'),
  way: takes('steam', 'steam, boil or bake'),
  'tub start way': takes('split', 'split, new or bought'),
  'cultures way': takes('split', 'split or new'),
  who: takes('R-builder', 'who decides'),
  'did who': takes('R-builder', 'the rate of who did it, or who decides'),
};

/** What an option of a command is for; `undefined` if nobody wrote it down yet. */
export function optionWords(command: string, option: string): OptionWords | undefined {
  return words[`${command} ${option}`] ?? words[option];
}
