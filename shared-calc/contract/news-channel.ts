/** The channel on which the desktop sends news to its page. */
export const newsChannel = 'news';
