/** The names under which the desktop's page asks the shell for its file dialogs. */
export const fileCalls = {
  open: 'files.open',
  make: 'files.make',
  saveCopy: 'files.saveCopy',
  openDropped: 'files.openDropped',
} as const;
