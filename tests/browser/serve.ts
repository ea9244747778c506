import { join } from 'node:path';
import { ROOT } from '../../.ci/house.mjs';
import { serve } from '../../.ci/static-server.mjs';

/** The built app. */
export const DIST = join(ROOT, 'dist');

/** A server of the built app, on this machine only. */
export interface Served {
  /** Where it answers, without a slash at the end: `http://localhost:41234`. Secure enough for a service worker. */
  readonly origin: string;
  /** The port, to serve there again after `close`. */
  readonly port: number;
  /** Ends it and drops every connection. */
  close(): Promise<void>;
}

/** Serves a built folder (the app's own by default) on a free port, or on the given one, just as `npm start` does. */
export function serveApp({
  folder = DIST,
  port = 0,
}: {
  folder?: string;
  port?: number;
} = {}): Promise<Served> {
  return serve({ folder, port });
}
