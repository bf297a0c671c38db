import { derive } from '#shared-calc/derive/derived.ts';
import { benchSection } from '#renderer/drawing/section-of.ts';
import { headline } from '#renderer/store/headlines.ts';
import { headView } from '#renderer/store/head-view.ts';
import { lineFaces } from '#renderer/store/line-faces.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { orderSums, orderNeeds } from '#shared-calc/bench/order-sums.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { workedJob } from '#tests/worked-job.ts';
import type { WorkedJob } from '#shared-calc/jobs/worked-job.ts';
import { orderPlants } from '#shared-calc/jobs/order-plants.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import { benchPlace } from '#shared-calc/jobs/place-checks.ts';
import { plantNeeds, plantPlace } from '#shared-calc/jobs/plant-place.ts';
import { surveyLines } from '#shared-calc/jobs/survey-job.ts';
import { buildCards } from '#shared-calc/papers/build-card.ts';
import { sizeCare } from '#shared-calc/prepare/size-care.ts';
import { handoverCards } from '#shared-calc/papers/handover-card.ts';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { animalsFor } from '#shared-calc/prepare/culture-demands.ts';
import { checkSheet } from '#shared-calc/prepare/mends.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { freeStore } from '#shared-calc/prepare/plan-store.ts';
import { prepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { stepMinutes } from '#shared-calc/prepare/step-minutes.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { nextActOf } from '#shared-calc/jobs/next-act.ts';
import { pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';

/** Everything shown or printed about a job, as plain data. */
export function everyView(records: Records, id: string): Readonly<Record<string, unknown>> {
  const job = records.job.get(id);
  if (!job) throw new Error(`no job ${id}`);
  const open = workedJob(records, job, DEMO_DAY);
  return {
    next: nextActOf(job.state),
    ...moneyViews(records, open),
    ...planViews(records, job, open),
    ...Object.fromEntries(keysOf(open.sheet).map((key) => [key, sizeViews(records, job, { ...open, key })])),
  };
}

function moneyViews(records: Records, open: WorkedJob) {
  const { bench, pricing, sheet } = open;
  const keys = keysOf(sheet);
  const sums = orderSums(bench, keys, pricing);
  if (!sums.ok) throw new Error(JSON.stringify(sums.fault));
  const body = freezeQuote(records, open, sums.value, { number: 'Q-0001', revision: 'A', issuedOn: DEMO_DAY });
  return {
    needs: orderNeeds(bench, keys, { ...pricing, stock: NO_STOCK }),
    quote: sums.value.quote,
    printed: quoteModel(body),
    run: sheet.job && derive(records, DEMO_DAY).run({ jobs: [sheet.job.id] }),
    options: optionsPage({ bench, pricing, records, on: DEMO_DAY }),
    panes: paneCuts(bench),
    survey: surveyLines(bench.input().lines).map(({ text }) => text),
  };
}

function planViews(records: Records, job: Job, { bench, pricing, sheet }: WorkedJob) {
  const display = displayOf(workshopOf(records));
  const facts = planFacts(bench, keysOf(sheet), { records, store: freeStore(records, DEMO_DAY), on: DEMO_DAY });
  if (!facts.ok) throw new Error(JSON.stringify(facts.fault));
  const plan = prepPlan(facts.value, { on: DEMO_DAY, calendar: calendarOf(records), handover: '2027-06-30' });
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  const { handover, care, build } = plan.value;
  const crushing = { records, prices: pricing.prices, display, survey: job.survey };
  return {
    facts: facts.value,
    plan: plan.value,
    minutes: stepMinutes(bench, keysOf(sheet)),
    pick: pickLists(bench, records, display),
    build: buildCards(bench, crushing),
    watch: watchCards(bench, display),
    animalsIn: animalsInCard({ build, settleInDays: facts.value.settleIn, job, bench, display }),
    care: sizeCare(bench, handover, display),
    handover: handoverCards(bench, { job, handover, care, workshop: workshopOf(records), display }),
    plants: orderPlants([{ bench, survey: job.survey }], pricedPlants(records, pricing.prices)),
    cultures: [...records.cultureKind.values()].map((kind) => animalsFor(bench, keysOf(sheet), kind)),
  };
}

function sizeViews(records: Records, job: Job, { bench, pricing, sheet, key }: WorkedJob & { readonly key: string }) {
  const display = displayOf(workshopOf(records));
  const { lines } = bench.input();
  const faces = lineFaces(lines, display);
  const recipe = { id: job.recipe, title: job.recipe, note: '' };
  const column = sheet.columns.find((each) => each.key === key);
  if (!column) throw new Error(`no column ${key}`);
  return {
    head: headView({ ...column, written: new Map(), locals: new Map() }, bench, faces, { recipe, recipes: [recipe] }),
    section: benchSection(bench, key),
    headlines: [...faces.sections.keys()].map((section) => headline(bench, key, section, faces)),
    checks: checksOf(bench, key, display),
    sheet: checkSheet(bench, key, { pricing, display }),
    place: benchPlace(bench, job, display)(key),
    plants: [plantPlace(bench, key, { survey: job.survey }), plantNeeds(bench, key)],
    figures: figuresOf(bench, key),
  };
}

function figuresOf(bench: Bench, key: string) {
  return bench.input().lines.map(({ name }) => bench.box(key, name).value);
}
