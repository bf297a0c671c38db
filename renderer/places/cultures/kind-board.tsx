import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Curve } from '#renderer/curves/curve.tsx';
import { growthSpec } from '#renderer/curves/growth-spec.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag, FlagRows } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { cultureBoard, type CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { isFlies } from '#shared-calc/prepare/culture-demands.ts';
import { boardCautions } from '#shared-calc/prepare/say-cultures.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import { cultureAlarms, type CultureAlarm } from '#shared-calc/derive/culture-alarms.ts';
import { fedHere } from '#shared-calc/derive/fed-here.ts';
import { jobsToStock, kindDemands, type KindDemands } from '#shared-calc/derive/kind-demands.ts';
import type { CultureState } from './culture-state.ts';
import { Flies } from './flies.tsx';
import { Founders } from './founders.tsx';
import { portionOf } from '#shared-calc/prepare/portion-of.ts';
import { tubsOf } from '#shared-calc/prepare/standing-tub.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { Wanted } from './wanted.tsx';
import { TubList } from './tub-list.tsx';
import css from '#renderer/kit/part-page.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface KindsParts {
  readonly kinds: readonly CultureKind[];
  readonly here: string | undefined;
  readonly records: Pick<Records, 'tub'>;
}

/** The kinds, each with its number of tubs. */
export function CultureKinds({ kinds, here, records }: KindsParts) {
  return (
    <Tabs label="Kinds of culture">
      {kinds.map(({ id, label }) => {
        const tubs = [...records.tub.values()].filter(({ kind }) => kind === id).length;
        return (
          <a key={id} href={writeRoute('cultures', id)} aria-current={id === here ? 'page' : undefined}>
            {label} <Muted>{tubs}</Muted>
          </a>
        );
      })}
    </Tabs>
  );
}

interface BoardParts {
  readonly state: CultureState;
  readonly context: BookContext;
  readonly kind: CultureKind;
}

/** One kind: alarms first, then demand, its tubs, and its growth. */
export function KindBoard({ state, context, kind }: BoardParts) {
  const { records, today, workshop, display } = context;
  const demands = kindDemands(context, kind);
  const firstFlies = addDays(today, kind.firstHarvestDays);
  const fed = fedHere(context, kind);
  const aWeek = Math.max(state.flies.value, Math.ceil(fed.aWeek));
  const board = cultureBoard({
    kind,
    demands: demands.demands,
    tubs: tubsOf(records, kind.id, today),
    way: isFlies(kind) ? 'split' : state.way.value,
    portion: portionOf(records, kind, today),
    on: today,
    ...(isFlies(kind) && { flies: { kind, aWeek, from: firstFlies } }),
  });
  const coins = (amount: number) => `${showCoins(amount, workshop)} ${workshop.currency}`;
  const spec = useMemo(() => growthSpec(kind, workshop.decimalComma), [kind, workshop.decimalComma]);
  if (!board.ok) return <EmptyNote>{board.fault}</EmptyNote>;
  return (
    <>
      <Alarms alarms={cultureAlarms(board.value, { today, coins, display })} unknown={demands.unknown} />
      <div class={css['twoColumns']}>
        <div>
          {isFlies(kind) ? (
            <Flies state={state} board={board.value} fed={fed} days={display} />
          ) : (
            <Wanted board={board.value} demands={demands} display={display} />
          )}
        </div>
        <Founders board={board.value} state={state} decimalComma={workshop.decimalComma} />
      </div>
      <TubList
        standing={board.value.standing}
        kind={kind}
        api={state.api}
        context={context}
        jobs={jobsToStock(context).planned.map(({ job }) => job)}
      />
      {spec && <Curve spec={spec} decimalComma={workshop.decimalComma} />}
      <Minded board={board.value} display={display} />
    </>
  );
}

interface AlarmsParts {
  readonly alarms: readonly CultureAlarm[];
  readonly unknown: KindDemands['unknown'];
}

function Alarms({ alarms, unknown }: AlarmsParts) {
  if (alarms.length + unknown.length === 0) return <p>Nothing to start and nothing that cannot be ready in time.</p>;
  return (
    <div role="status">
      <FlagRows label="Alarms">
        {alarms.map(({ level, says }) => (
          <li key={says}>
            <Flag state={level} sign={level}>
              {level === 'stop' ? 'not in time' : 'watch'}
            </Flag>
            <span>{says}</span>
          </li>
        ))}
        {unknown.map(({ job: worked, fault }) => (
          <li key={worked.job.id}>
            <Flag state="needs" sign="need">
              not known yet
            </Flag>
            <span>
              <Link href={writePrepare(worked.job.id, 'dates')}>{jobName(worked.job)}</Link>: {sayNoPlan(worked, fault)}
            </span>
          </li>
        ))}
      </FlagRows>
    </div>
  );
}

function Minded({ board, display }: { readonly board: CultureBoard; readonly display: Display }) {
  return <CautionList cautions={boardCautions(board)} display={display} />;
}
