import { useMemo } from 'preact/hooks';
import { ChoiceField, TextField } from '#renderer/kit/field.tsx';
import { copyText } from '#renderer/files/copy-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { argumentWords } from './function-words.ts';
import { tryFunction, type Tried } from './try-function.ts';
import css from './function-book.module.css';
import { Muted, MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { PutIn } from '#renderer/kit/put-in.tsx';

interface TryBoxParts {
  readonly entry: TradeFunction;
  readonly texts: readonly string[];
  readonly write: (texts: readonly string[]) => void;
  readonly display: Display;
  readonly say: (words: string) => void;
}

/** Evaluates a function while the user types; each fault is shown under its argument. */
export function TryBox({ entry, texts, write, display, say }: TryBoxParts) {
  const tried = useMemo(
    () => (entry.inRules ? tryFunction(entry, texts, display) : undefined),
    [entry, texts, display],
  );
  return (
    <SidePanel look="cell" class={css['try']} label="Try it">
      <PanelHead where={entry.name} title="Try it" />
      {tried === undefined && (
        <MutedLine>
          It works over lists or dates, so that it has no name in rules; the program itself calls it.
        </MutedLine>
      )}
      {tried &&
        entry.args.map((argument, at) => (
          <ArgumentEntry
            key={argument.name}
            argument={argument}
            text={texts[at] ?? ''}
            write={(text) => write(entry.args.map((_, index) => (index === at ? text : (texts[index] ?? ''))))}
            wrong={tried.faults[at]}
          />
        ))}
      {tried && <Answer tried={tried} display={display} />}
      {tried && (
        <Buttons>
          <Button onClick={() => copyText(document, tried.rule) && say(`Copied: ${tried.rule}`)}>Copy as a rule</Button>
        </Buttons>
      )}
    </SidePanel>
  );
}

interface ArgumentEntryParts {
  readonly argument: Argument;
  readonly text: string;
  readonly write: (text: string) => void;
  readonly wrong: string | undefined;
}

function ArgumentEntry({ argument, text, write, wrong }: ArgumentEntryParts) {
  const { name, takes } = argument;
  const words = typeof takes === 'string' ? (takes === 'yes_no' ? ['yes', 'no'] : undefined) : takes;
  if (words) {
    const options = words.map((word) => ({ value: word, label: word }));
    return <ChoiceField label={name} value={text} options={options} choose={write} />;
  }
  const { kind, unit, range } = argumentWords(argument);
  const hint = [unit === '' ? kind : unit, range].filter((part) => part !== '').join(', ');
  return <TextField label={name} figure text={text} typing={write} wrong={wrong} hint={hint} />;
}

function Answer({ tried, display }: { readonly tried: Tried; readonly display: Display }) {
  return (
    <div class={css['givesNow']}>
      <output aria-live="polite">
        {tried.answer && (
          <>
            {tried.answer.figure} <Muted>{unitWords(tried.answer.unit, display.currency)}</Muted>
          </>
        )}
        {tried.wrong !== undefined && <span class={css['refused']}>{tried.wrong}</span>}
      </output>
      {tried.working.map((line) => (
        <PutIn key={line}>{sayUnits(line)}</PutIn>
      ))}
      {tried.warnings.map(({ says, decides }) => (
        <Caution key={says} decides={`${whoDecides(decides)}.`}>
          {says}
        </Caution>
      ))}
    </div>
  );
}
