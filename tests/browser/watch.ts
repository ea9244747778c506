import type { BrowserContext, Page } from 'playwright-core';

/** What a browser complained of, and what it asked others for. */
export interface Watch {
  readonly complaints: string[];
  /** Empties the list: what was meant to go wrong has been seen. */
  forget(): void;
}

/**
 * Listens to every page of a context from now on: errors on the console, errors nobody caught, breaches of the page's
 * own policy, and requests to any other place than `origin`. Failed requests to `origin` are not held against a page
 * whose host was taken away; `complaints` names them only while `hostIsThere`.
 */
export async function watch(
  context: BrowserContext,
  origin: string,
  hostIsThere: () => boolean = () => true,
): Promise<Watch> {
  const complaints: string[] = [];
  await context.exposeBinding('policyBroken', (_source, what: string) => void complaints.push(what));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      const tell = (globalThis as unknown as { policyBroken?: (what: string) => void }).policyBroken;
      tell?.(`policy: ${event.violatedDirective} by ${event.blockedURI}`);
    });
  });
  const listen = (page: Page): void => {
    page.on('console', (message) => {
      if (message.type() !== 'error' && message.type() !== 'warning') return;
      if (!hostIsThere() && /Failed to load resource|net::ERR_|fetching the script/.test(message.text()))
        return;
      complaints.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`));
    page.on('crash', () => complaints.push('crashed'));
  };
  for (const page of context.pages()) listen(page);
  context.on('page', listen);
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (asked !== origin && protocol !== 'blob:' && protocol !== 'data:') {
      complaints.push(`request to ${request.url()}`);
    }
  });
  return {
    complaints,
    forget() {
      complaints.length = 0;
    },
  };
}
