import { actNames } from '#shared-calc/words/act-names.ts';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import { animalsInCard } from '#shared-calc/papers/watch-card.ts';
import { eachOnce } from '#shared-calc/cautions/all-cautions.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import { watchedSizes } from '#shared-calc/prepare/watched-sizes.ts';
import { Readings } from './readings.tsx';
import { OpenAJob } from './open-a-job.tsx';
import type { PartView } from './part-view.ts';
import { writeCards, writePrepare } from '#renderer/frame/prepare-route.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Tabs } from '#renderer/kit/tabs.tsx';
import css from './prepare.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

/** The commissioning watch of a size, typed or pasted, compared with its band; and when the animals go in. */
export function WatchPart(view: PartView) {
  const { context, job, of } = view;
  const worked = context.job(job?.id ?? '');
  const sizes = worked ? watchedSizes(worked.sheet, worked.bench) : [];
  if (!job) return <OpenAJob context={context} part="watch" />;
  const size = sizes.find(({ key }) => key === of) ?? sizes[0];
  if (!size) return <EmptyNote>{job.id} has no size yet: take one first.</EmptyNote>;
  return (
    <>
      <Tabs label="Sizes">
        {sizes.map(({ key, called, label }) => (
          <a key={key} href={writePrepare(job.id, 'watch', key)} aria-current={key === size.key ? 'true' : undefined}>
            {called} <Muted>{label}</Muted>
          </a>
        ))}
      </Tabs>
      <Readings key={size.id} view={view} size={size} />
      <AnimalsIn view={view} />
    </>
  );
}

/** Dates of the checks, and what must be true before the animals go in. */
function AnimalsIn({ view: { context, job } }: { readonly view: PartView }) {
  if (!job) return null;
  const worked = context.job(job.id);
  const plan = worked?.plan();
  if (!worked || !plan) return null;
  if (!plan.ok) return <EmptyNote>{sayNoPlan(worked, plan.fault)}</EmptyNote>;
  const card = animalsInCard({
    build: plan.value.plan.build,
    settleInDays: plan.value.facts.settleIn,
    job,
    bench: worked.bench,
    display: context.display,
  });
  return (
    <section>
      <h2>Animals in</h2>
      <p>
        {paperWeekday(card.animalsIn, context.display)}, {card.settleInDays} days after the build.{' '}
        {card.looks.length === 0
          ? 'The settle-in is long enough: no watch plan of its own.'
          : `Look on day ${card.looks.map(({ day, date }) => `${day}, ${paperDay(date, context.display)}`).join('; ')}.`}
      </p>
      <ul class={css['plainList']}>
        {card.before.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
      <CautionList
        cautions={eachOnce([...card.cautions, ...card.audience, ...card.protection])}
        display={context.display}
      />
      <p>
        <Link href={writeCards(job.id, 'animals-in')}>{actNames.onPaper}</Link>
      </p>
    </section>
  );
}
