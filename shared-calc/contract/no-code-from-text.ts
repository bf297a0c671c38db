import { z } from 'zod';

/*
 * Must be imported before anything else of the page. The page's security policy forbids making code from text, and even
 * testing for it is reported as a violation. Other processes may use the faster parsers made from text.
 */
z.config({ jitless: true });
