/** A topic about the whole program rather than one place. */
interface Guide {
  readonly title: string;
  readonly says: readonly string[];
}

export const guides = {
  'first-quote': {
    title: 'The first quote',
    says: [
      'In a new book {today|Today} lists what a first quote lacks, from units to prices. Write each entry where it stands: Enter goes on to the next field, *Next* to the next entry.',
      'Later, begin a job under {jobs|Jobs}. Take a tank from the tank book, or enter it by its outside size.',
      'The bench works every {line} for that tank. Look at the {flag|flags}, and answer the {survey} for what is {not-known}.',
      'Go to {quotes|Quote}, read it as the client will, and issue it. It then stays as it is; a later wish becomes its next {revision}.',
      'When the client says yes and the {deposit} is in, {run|the shopping run} orders what is needed, and {prepare|the plan} says what to do on which day.',
    ],
  },
  figures: {
    title: 'Writing figures',
    says: [
      'Write a figure with or without its unit: 40 mm, 1 1/2 in, 2 gal, 68 F. Without one it is in the unit that the line shows.',
      'A number that could be two is asked about: 1,250 may be 1250 or 1.25. The workshop chooses its decimal sign in the {workshop|settings}.',
      'Everything is worked in full and only shown rounded. Counts of packs, panes, lamps and plants round up; money rounds to the coin.',
    ],
  },
  'undo-and-saving': {
    title: 'Saving and taking back',
    says: [
      'Every edit is in the {book} at once: there is no act to save. The foot of the page says when it was last saved.',
      'Undo takes back the last edit, also after the program was closed. An issued quote and a placed order stay.',
      'A {backup} of each day lies beside the book.',
    ],
  },
  'who-decides': {
    title: 'Who decides',
    says: [
      'The program reminds and refuses figures that cannot be. It does not rule on health, law, structure or wiring: each caution names the person who decides.',
      'Its figures of heat, water, air and load are estimates from what you told it. The probe, the {commissioning-watch} and the people named come first.',
    ],
  },
} as const satisfies Readonly<Record<string, Guide>>;
