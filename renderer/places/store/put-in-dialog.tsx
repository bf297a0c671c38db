import { useState } from 'preact/hooks';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { calledOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { jobOptions } from './job-options.ts';
import { asksOf, putInTyped, type PutInWishes } from './asked-entry.ts';

interface SheetParts {
  readonly api: JobApi;
  readonly goods: string | undefined;
  readonly close: () => void;
}

const fields = ['bestBefore', 'until', 'note'] as const;

/** Adds an entry to the Store by hand. */
export function PutInDialog({ api, goods, close }: SheetParts) {
  const context = contextNow(api);
  const { records } = context;
  const [wishes, setWishes] = useState(asksOf(goods ?? storedGoods(records)[0]?.value ?? ''));
  const [wrong, setWrong] = useState<string>();
  const put = () => {
    const typed = putInTyped(records, wishes, context);
    const refused = typed.ok ? api.doAct('putIn', typed.value) : typed.fault;
    setWrong(refused);
    if (refused !== undefined) return false;
    location.hash = writeRoute('store', wishes.of);
    return true;
  };
  return (
    <AskDialog title="Put into the Store" does="Put it in" run={put} wrong={wrong} close={close}>
      {(enter) => (
        <Wishes wishes={wishes} days={context} change={(some) => setWishes({ ...wishes, ...some })} enter={enter} />
      )}
    </AskDialog>
  );
}

interface WishesParts {
  readonly wishes: PutInWishes;
  readonly days: BookContext;
  readonly change: (some: Partial<PutInWishes>) => void;
  readonly enter: () => void;
}

function Wishes({ wishes, days, change, enter }: WishesParts) {
  const { records } = days;
  const unit = unitInStore(wishes.of, records) ?? 'each';
  return (
    <Fields look="wide">
      <PickOne
        label={headingOf('move', 'of')}
        value={wishes.of}
        options={storedGoods(records)}
        choose={(id) => change({ of: id })}
      />
      <TextField
        label={calledOf('move', 'amount')}
        unit={unit === 'each' ? '' : unit}
        figure
        text={wishes.amount}
        typing={(amount) => change({ amount })}
        enter={enter}
      />
      <TextField
        label="Paid for it"
        unit={workshopOf(records).currency}
        figure
        text={wishes.paid}
        typing={(paid) => change({ paid })}
        enter={enter}
      />
      <Checkbox label={headingOf('move', 'sealed')} on={wishes.sealed} turn={(sealed) => change({ sealed })} />
      <PickOne
        label={headingOf('move', 'job')}
        value={wishes.job}
        options={jobOptions(records, 'nobody')}
        choose={(job) => change({ job })}
      />
      {fields.map((key) => (
        <TextField
          key={key}
          label={headingOf('move', key)}
          text={wishes[key]}
          typing={(text) => change({ [key]: text })}
          enter={enter}
          {...(key !== 'note' && { days })}
        />
      ))}
    </Fields>
  );
}

/** What the Store can hold: all materials except those cut to size, tanks, and plants by name. */
function storedGoods({ material, tank, plant }: Pick<Records, 'material' | 'tank' | 'plant'>): readonly Option[] {
  const materials = [...material.values()].filter(({ sale }) => sale !== 'cut');
  const plants = [...plant.values()].map(({ id, name: label }) => ({ id, label }));
  return [...materials, ...tank.values(), ...plants].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
}
