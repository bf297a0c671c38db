/** Keys grouped by purpose. */
export interface KeyGroup {
  readonly title: string;
  /** In the grids of bench and books, or on every place. */
  readonly on: 'grid' | 'page';
  readonly keys: readonly (readonly [keys: string, does: string])[];
}

/** The keys as the page lists them, most used first; on a Mac, Command replaces Ctrl. */
export const keyGroups: readonly KeyGroup[] = [
  {
    title: 'Walk the cells of the bench and of the books',
    on: 'grid',
    keys: [
      ['Arrows', 'to the next cell; with Ctrl to the next section, the first or the last size'],
      ['Tab', 'out of the grid, to what comes next; with Shift to what comes before'],
      ['Up on the first line', 'to the head of the column: Enter opens it or goes into its card, Menu key its acts'],
      ['Home, End', 'to the first and the last cell of the line; with Ctrl to the first and the last line'],
      ['Shift with arrows', 'choose a range'],
      ['Alt Shift A', 'keep it and choose another, as the mouse with Ctrl'],
      ['Shift Space, Ctrl Space', 'choose the whole line, the whole column'],
      ['Ctrl A', 'choose all'],
      ['Menu key, Shift F10', 'what can be done with it, as with the right button'],
      ['Escape', 'from a range back to one cell'],
    ],
  },
  {
    title: 'Write in them',
    on: 'grid',
    keys: [
      ['Any letter or figure', 'replaces what stands in the cell; in a range, in all its cells'],
      ['Enter, F2', 'write on in what stands there'],
      ['Alt Down', 'open its list or its calendar'],
      ['Enter on a section', 'open or close it; with Shift bring all its lines out'],
      ['Delete', 'bench: back to house; books: empty the cell'],
      ['Ctrl C, Ctrl X, Ctrl V', 'copy, cut, paste, also from and to other programs'],
      ['Alt Shift C', 'copy with names: with the heads of lines and columns, and units'],
      ['Alt Shift Right', 'same to the right: the first cell of the range into the others of its line'],
      ['Alt Shift Down', 'books: same below, the first line of the range into those under it'],
      ['Insert, Ctrl Delete', 'books: add a line, remove the chosen ones'],
    ],
  },
  {
    title: 'While a cell is open',
    on: 'grid',
    keys: [
      ['Enter', 'take it and go down; with Shift up'],
      ['Tab', 'take it and go right; with Shift left'],
      ['Escape', 'leave the cell as it was'],
      ['Up, Down', 'walk the list that is offered; Enter or Tab takes one'],
      ['Alt Down', 'the calendar of a day'],
    ],
  },
  {
    title: 'Everywhere',
    on: 'page',
    keys: [
      ['Ctrl Z', 'undo'],
      ['Ctrl Y', 'redo, as does Ctrl Shift Z'],
      ['/, Ctrl F', 'find a line, a tank or a place'],
      ['F7', 'next figure that the last edit moved; with Shift the one before'],
      ['F8', 'next flag; with Shift the one before'],
      ['F6', 'on to the places, the work, the side panel, the help, the line at the foot; with Shift back'],
      ['T', 'at a picture: its figures as a table, and back'],
      ['F1', 'help for this place, with its keys'],
    ],
  },
];
