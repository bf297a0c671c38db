import type { BookApi, BookContext } from './book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import type { SoldJob } from '#shared-calc/derive/sold-job.ts';
import { houseOffers, type HouseOffer } from '#shared-calc/derive/house-offers.ts';
import { isUnsent, latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { changeInSentence, changeWords, differenceWords, effectWords } from '#shared-calc/papers/house-said.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { isSoldState } from '#shared-calc/jobs/house-changes.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface Parts {
  readonly job: Job;
  readonly context: BookContext;
  readonly api: Pick<BookApi, 'doAct'>;
}

/** What a job is sold as, what is not in that quote any more, and what its house offers it. */
export function SoldAs({ job, context, api }: Parts) {
  const sold = context.job(job.id)?.sold;
  if (!sold)
    return isSoldState(job.state) ? (
      <Hint>Nothing is frozen: {job.id} has no quote that can be worked from, and follows its house.</Hint>
    ) : null;
  const { quote } = sold;
  const differs = differenceWords(quote.id, sold.differs(), context);
  return (
    <>
      <p>
        {isUnsent(quote) ? (
          `Frozen as ${quote.id}, which no client was sent`
        ) : (
          <>
            Sold as <Link href={writeRoute('quotes', quote.id)}>{quote.id}</Link>
          </>
        )}
        {job.acceptedOn !== undefined && `, accepted ${paperDay(job.acceptedOn, context.display)}`}. Its needs, hours,
        cards and price are worked from it.
      </p>
      {differs !== '' && (
        <p>
          <b>{differs}</b>: issue a revision.
        </p>
      )}
      <LaterQuote job={job} context={context} api={api} />
      <Answered sold={sold} context={context} />
      {houseOffers(context, job.id).map((offer) => (
        <Offer key={offer.change.id} offer={offer} context={context} api={api} />
      ))}
    </>
  );
}

/** A revision that was issued since: saying yes to it moves what the job is sold as. */
function LaterQuote({ job, context: { records }, api }: Parts) {
  const latest = latestQuote(records, job.id);
  if (!latest || latest.id === job.soldAs) return null;
  const accept = () => void api.doAct('moveJob', { job: job.id, state: 'accepted', quote: latest.id });
  return (
    <Buttons>
      <Button onClick={accept}>The client says yes to {latest.id}</Button>
    </Buttons>
  );
}

function Answered({ sold, context: { display } }: { readonly sold: SoldJob } & Pick<Parts, 'context'>) {
  return (
    <>
      {sold.taken.map((change) => (
        <MutedLine key={change.id}>
          Took {change.id}: {changeInSentence(change, display)}
        </MutedLine>
      ))}
      {sold.left.map((change) => (
        <MutedLine key={change.id}>
          Left {change.id}: {changeInSentence(change, display)}
        </MutedLine>
      ))}
    </>
  );
}

interface OfferParts extends Pick<Parts, 'context' | 'api'> {
  readonly offer: HouseOffer;
}

function Offer({ offer: { job, change, effect }, context, api }: OfferParts) {
  const answer = (said: 'take' | 'leave') => () =>
    void api.doAct('answerHouse', { change: change.id, job: job.id, answer: said, who: 'R-builder' });
  const said = `The house has changed since this was sold: ${changeInSentence(change, context.display)}.`;
  return (
    <div role="group" aria-label={`${change.id}: ${changeWords(change, context.display)}`}>
      <p>
        {said} {capital(effectWords(effect(), context))}.
      </p>
      {change.note !== '' && <MutedLine>{change.note}</MutedLine>}
      <Buttons>
        <Button look="main" onClick={answer('take')}>
          Take the change
        </Button>
        <Button onClick={answer('leave')}>Leave the change</Button>
      </Buttons>
    </div>
  );
}
