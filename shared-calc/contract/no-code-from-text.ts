import { z } from 'zod';

/*
 * To be imported before anything else of the page: the page's walls let no code be made from text, and even the
 * trial whether it can be is reported as a breach. Elsewhere the quicker readers made from text are welcome.
 */
z.config({ jitless: true });
