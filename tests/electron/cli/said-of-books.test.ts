import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const lists: readonly Said[] = [
  [
    ['papers'],
    [
      'paper       of',
      '----------  --------  ---------------------------------------------',
      'quote       order     the quote as the client reads it',
      'options     order     sizes side by side to choose from',
      'inside      order     cost, margin and price, for the builder alone',
      'needs       order     what is used, what to buy and what stays over',
      'pick        tank      what to have ready on build day',
      'run         order     everything to buy, by supplier',
      'order       order     the order to each supplier',
      'survey      job       what is measured and asked on site',
      'build       tank      the build, step by step',
      'watch       tank      readings before animals go in',
      'animals-in  order     when animals go in, and days to look',
      'handover    tank      the page that stays with the tank',
      'care        order     the first year: visits and rounds',
      'treatment   order     how its leaves are treated',
      'prep        order     what to order and start, day by day',
      'labels      workshop  labels of treated batches',
      'checks      tank      what holds, what does not, what would mend it',
      'calendar    order     all its dates up to the end of the first year',
    ],
  ],
  [
    ['acts'],
    [
      'act            input                                                                                                                    does',
      '-------------  -----------------------------------------------------------------------------------------------------------------------  ------------------------------------------------------------------------------------------------------------',
      'put            kind, record                                                                                                             Adds a record to the book, or replaces the one of its kind with its id.',
      'remove         kind, id                                                                                                                 Removes a record from the book with what belongs to it; refused while something else uses it.',
      'rescaleCoins   coinDecimals                                                                                                             Gives the currency another number of decimals; every amount stays what it is worth.',
      'addLine        recipe, after?                                                                                                           Adds an empty line to a house recipe, straight after another or at its end.',
      'renameLine     line, name                                                                                                               Renames a line through every rule, sentence and local value that says its name.',
      "moveLine       line, to                                                                                                                 Moves a line one place up or down; past its section's edge it goes over into the next section.",
      'removeLine     line, anyway?                                                                                                            Takes a line out of its recipe, with what jobs have written over it; refused while anything needs it.',
      'changeLine     line, fields                                                                                                             Changes fields of a line; refused where a rule of the recipe could no longer be read.',
      "writeLine      line, text                                                                                                               Writes a line's figure or rule in its house recipe; an empty text is a figure not known yet.",
      'moveUse        line, use?                                                                                                               Has the program read a line for a use; the line of its recipe that had it until now loses it.',
      'copyRecipe     recipe                                                                                                                   Makes a new house recipe with all lines of another.',
      'newJob         title, recipe?, sizes?, writings?, by?, handover?, client?, contact?, site?, access?, audience?, animals?, area?, note?  Makes a job of an enquiry, with its sizes and what the client wants otherwise than the house.',
      'copyJob        job                                                                                                                      Makes a new enquiry with the sizes, local values and one-off lines of another job.',
      'moveJob        job, state                                                                                                               Moves a job to a state; a job that is built takes its materials out of the Store.',
      'recordDeposit  job, coins, on?                                                                                                          Records a deposit with its day; a job not so far yet is deposit in with it.',
      'setValues      job, writings, by?                                                                                                       Writes cells of a job over, for one size by its column or for the whole job.',
      'setSizes       job, sizes                                                                                                               Gives a job these sizes in this order; one that stays keeps its local values.',
      'writeSurvey    job, figures?, site?, access?, audience?, animals?, area?                                                                Takes a survey in: its figures hold for the whole job, and an enquiry is surveyed with it.',
      'writeJob       job, fields                                                                                                              Rewrites what is told of a job; null takes a date or a figure away.',
      'setNextAct     job, act, on?                                                                                                            Sets what is to be done next with a job, by a day where there is one.',
      'markOrdered    jobs                                                                                                                     Moves jobs on to ordered, all of them or none; one whose deposit is not in is refused.',
      'choosePacks    jobs, material, counts                                                                                                   Chooses packs of a material by hand for the run over these jobs, or gives the choice up.',
      'writeCells     job, cells                                                                                                               Writes cells of a job over as they are typed, all of them or none; an emptied cell goes back to the house.',
      'backToHouse    job, cells                                                                                                               Takes cells back to the house; where none has a value of its own, values of the whole job go instead.',
      'setKit         job, column, kit                                                                                                         Gives a size another kit level; the one that the house or the job has takes the local one away.',
      'holdForJob     job, column, line, text?                                                                                                 Makes the value of a cell, or a text, hold for the whole job; what stood in this size alone goes.',
      'noteCell       job, column, line, note                                                                                                  Writes the note beside what a cell is written over with.',
      'sayWhoAsked    job, column, line, by                                                                                                    Says who asked for what a cell is written over with; What changed tells it.',
      "sendToHouse    job, column, line                                                                                                        Makes the value of a cell the house's own: the recipe takes it, and the cell follows the house again.",
      'takeSize       job, tank                                                                                                                Puts a tank of the tank book on the bench of a job, as its last size.',
      'newTank        job, tank, priceCoins?                                                                                                   Enters a tank that is in no book yet, with its price from today where that is known, and takes it as a size.',
      'takeAgain      job, column                                                                                                              Puts a second column of a tank after its size, by the house.',
      'copySize       job, column                                                                                                              Puts a second column of a tank after its size, with all its local values.',
      'dropSize       job, column                                                                                                              Takes a size off a job with its local values; refused where something has been measured of it.',
      'setCount       job, column, count                                                                                                       Sets how often a size is built.',
      'nameSize       job, column, label                                                                                                       Gives a size a name in its job; an empty text calls it by its tank again.',
    ],
  ],
];

const book: readonly Said[] = [
  [
    ['act', 'put', '{"kind":"rate","record":{"id":"R-night","label":"Night work","coins":6200,"per":"h"}}', '--try'],
    ['       record', '-----  ------------', 'added  rate R-night', '', 'Tried only: rate R-night added.'],
  ],
  [
    ['act', 'put', '{"kind":"rate","record":{"id":"R-night","label":"Night work","coins":6200,"per":"h"}}'],
    ['       record', '-----  ------------', 'added  rate R-night', '', 'Done: rate R-night added.'],
  ],
  [
    ['act', 'put', '{"kind":"rate","record":{"id":"R-night","label":"Night work","coins":6200,"per":"h"}}'],
    ['Nothing to do: the book says so already.'],
  ],
  [
    ['book', 'check'],
    [
      'records',
      '---------------  ---',
      'workshop           1',
      'supplier           6',
      'tank              12',
      'material          48',
      'pack              89',
      'pack price        89',
      'plant             15',
      'culture kind       6',
      'rate               6',
      'tax class          2',
      'margin            10',
      'closed day         2',
      'recipe             4',
      'line             875',
      'job                1',
      'size               3',
      'local value        0',
      'stock entry        8',
      'pack choice        0',
      'issued quote       0',
      'quote line         0',
      'treatment batch    0',
      'tub                0',
      'actual             0',
      '',
      'The book is sound, at revision 2.',
    ],
  ],
  [['book', 'new', './fresh.loamwright', '--start', 'plain'], ['Made: ./fresh.loamwright']],
  [['book', 'export', './copy.loamwright'], ['Written: ./copy.loamwright']],
  [
    ['book', 'import-prices', './prices.csv', '--try'],
    [
      'material  pack    from        before   price',
      '--------  ------  ----------  ------  ------',
      'M01       10 L    2090-04-01    9.80   10.20',
      'T07       1 each  2090-04-01  214.00  220.00',
      '',
      'Tried only: 2 prices could be taken in.',
    ],
  ],
  [
    ['book', 'import-prices', './wrong.csv', '--try'],
    ['! ./wrong.csv, row 2: M01 has no pack of 11 L. Its packs: 10 L, 45 L.', '! Nothing was taken in.'],
  ],
];

describe('what is printed of papers, acts and books', () => {
  const { file, saidInTurn } = useSaidWhole('2027-03-08');

  test('the lists of papers and of acts', async () => {
    expect(await saidInTurn(lists)).toEqual(lists);
  });

  test('an act, and the book looked through, written out and given prices', async () => {
    file('prices.csv', 'material,pack,unit,price,from', 'M01,10,L,10.20,2090-04-01', 'T07,1,each,220,2090-04-01');
    file('wrong.csv', 'material,pack,unit,price,from', 'M01,11,L,10.20,2090-04-01');
    expect(await saidInTurn(book)).toEqual(book);
  });
});
