import type { Sourced } from '../../cloth/advice.ts';
import { practice } from '../../cloth/source.ts';
import { type Length, mm } from '../../length/length.ts';

/** Length of machine stitching that is unpicked in a minute, threads picked out too, until the maker's own pace is known. */
export const UNPICKED_IN_A_MINUTE: Sourced<Length> = { value: mm(100), source: practice };

/**
 * Least time to open a seam anywhere: to find the place, to begin, and to fasten the ends of what stays.
 * @unit minutes
 */
export const OPENED_AT_LEAST: Sourced<number> = { value: 2, source: practice };

/** How far a seam is opened to either side of another seam that comes out under it. */
export const OPENED_AT_A_CROSSING: Sourced<Length> = { value: mm(50), source: practice };

/**
 * Time to take out work that has no length along an edge, such as buttonholes, as a part of the time to do it.
 * @unit part
 */
export const TAKEN_OUT: Sourced<number> = { value: 0.5, source: practice };

/**
 * Time to cut a piece again from cloth at hand, for one of it.
 * @unit minutes
 */
export const CUT_ANEW: Sourced<number> = { value: 8, source: practice };

/**
 * Time to mark the seam lines and notches of a piece that is cut again, or a seam line that moves, for one of it.
 * @unit minutes
 */
export const LINES_ANEW: Sourced<number> = { value: 3, source: practice };

/**
 * Least time for a step that is done again along a part of its length only.
 * @unit minutes
 */
export const AGAIN_AT_LEAST: Sourced<number> = { value: 1, source: practice };
