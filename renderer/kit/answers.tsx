import { useOwnId } from '#renderer/frame/use-own-id.ts';
import css from './answers.module.css';

interface AnswersParts<A extends string> {
  readonly label: string;
  /** Small type beside the label. */
  readonly aside?: string;
  readonly value: A;
  readonly answers: readonly A[];
  readonly choose: (answer: A) => void;
}

/** One of a few answers, side by side; arrows go from one to the next. */
export function Answers<A extends string>({ label, aside, value, answers, choose }: AnswersParts<A>) {
  const id = useOwnId();
  return (
    <fieldset class={css['answers']}>
      <legend>
        {label} {aside !== undefined && <span class={css['aside']}>{aside}</span>}
      </legend>
      <span class={css['row']}>
        {answers.map((answer) => (
          <label key={answer} data-on={answer === value ? '' : undefined}>
            <input type="radio" name={id} checked={answer === value} onChange={() => choose(answer)} />
            {answer}
          </label>
        ))}
      </span>
    </fieldset>
  );
}
