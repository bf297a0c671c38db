import { openBridge } from '#renderer/bridge.ts';

/* A page that is nothing but the door, for a test to call through and to read the news from. */
const bridge = openBridge(window);
const heard: unknown[] = [];
bridge.onChanged((news) => heard.push(news));
Object.assign(window, { bridge, heard });
