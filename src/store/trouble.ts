/**
 * What can go wrong with keeping deeds:
 * - `blocked`: another window holds the ledger open in an older version
 * - `slow`: the browser does not answer
 * - `newer`: a newer version of the app has opened the ledger
 * - `lost`: the connection broke, and was made again where the message says so
 * - `erased`: the browser has thrown the ledger away
 * - `restored`: the browser had lost the ledger, and it was put back from its second copy
 * - `full`: the device has no room
 * - `conflict`: two different deeds bear one name
 * - `failed`: anything else
 */
export type TroubleKind =
  | 'blocked'
  | 'slow'
  | 'newer'
  | 'lost'
  | 'erased'
  | 'restored'
  | 'full'
  | 'conflict'
  | 'failed';

/** Trouble with the ledger, in words for the maker. `cause` is what the browser said. */
export class Trouble extends Error {
  readonly kind: TroubleKind;

  constructor(kind: TroubleKind, message: string, cause?: unknown) {
    super(message, { cause });
    this.name = 'Trouble';
    this.kind = kind;
  }
}

const nameOf = (cause: unknown): string =>
  cause instanceof Error || cause instanceof DOMException ? cause.name : '';
const messageOf = (cause: unknown): string =>
  cause instanceof Error || cause instanceof DOMException ? cause.message : String(cause);

/** Puts what the browser threw into words. Trouble that is in words already comes back as it is. */
export const troubleOf = (cause: unknown): Trouble => {
  if (cause instanceof Trouble) return cause;
  const name = nameOf(cause);
  if (name === 'QuotaExceededError') {
    return new Trouble(
      'full',
      'There is no room left on this device, so this was not written down. Free some room and do it again.',
      cause,
    );
  }
  if (name === 'VersionError') {
    return new Trouble(
      'newer',
      'A newer Slipbaste has opened this ledger. Reload this page to go on; nothing is lost.',
      cause,
    );
  }
  if (name === 'ConstraintError') {
    return new Trouble(
      'conflict',
      'Another deed with the same name is in the ledger already, so this was not written down.',
      cause,
    );
  }
  if (isLost(cause)) {
    return new Trouble(
      'lost',
      'The connection to the ledger broke twice, so this was not written down. Reload this page and do it again.',
      cause,
    );
  }
  return new Trouble('failed', `This was not written down. The browser says: ${messageOf(cause)}`, cause);
};

/**
 * Whether an error means that the connection is gone and a new one may do. Nothing here aborts a transaction without a
 * reason of its own, so a bare abort is the connection's doing. Of other errors only the message tells.
 */
export const isLost = (cause: unknown): boolean =>
  ['InvalidStateError', 'AbortError'].includes(nameOf(cause)) ||
  (['UnknownError', 'TransactionInactiveError'].includes(nameOf(cause)) &&
    /clos|lost|terminat|internal error/i.test(messageOf(cause)));
