import { openBridge } from '#renderer/bridge.ts';
import { enterSession } from '#renderer/session-secret.ts';

/* A page with only the bridge, so that a test can call through it and read the news. */
await enterSession(window);
const bridge = openBridge(window);
const heard: unknown[] = [];
bridge.onChanged((news) => heard.push(news));
Object.assign(window, { bridge, heard });
