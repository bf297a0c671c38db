/** On this channel the desktop's page is told the news. */
export const newsChannel = 'news';
