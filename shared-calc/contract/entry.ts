/** Where the page keeps the secret of its session, in its tab's `sessionStorage`. */
export const sessionItem = 'loamwright session';

/** Takes the key of a link as a form, and answers with the secret of the session. */
export const entryPath = '/enter';
