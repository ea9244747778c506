/** A short click and a short buzz, each only where the maker wants it and the device can. Never the only sign. */

let context: AudioContext | undefined;

function blip(pitch: number, seconds: number): void {
  try {
    context ??= new AudioContext();
    if (context.state !== 'running') void context.resume().catch(() => {});
    const tone = context.createOscillator();
    const level = context.createGain();
    const at = context.currentTime;
    tone.frequency.value = pitch;
    level.gain.setValueAtTime(0.12, at);
    level.gain.exponentialRampToValueAtTime(0.0001, at + seconds);
    tone.connect(level).connect(context.destination);
    tone.start(at);
    tone.stop(at + seconds);
  } catch {
    // No sound here, or not yet allowed: the figure on the screen says the same.
  }
}

/** What the maker wants to hear and feel. */
export interface Feedback {
  readonly sound: boolean;
  readonly buzz: boolean;
}

/** One touch was taken. */
export function clicked({ sound, buzz }: Feedback): void {
  if (sound) blip(1400, 0.03);
  if (buzz) navigator.vibrate?.(18);
}

/** Something is over: a timer, or a whole line. */
export function rang({ sound, buzz }: Feedback): void {
  if (sound) {
    blip(880, 0.35);
    setTimeout(() => blip(1175, 0.5), 220);
  }
  if (buzz) navigator.vibrate?.([120, 80, 120]);
}

/** Can this device buzz at all? */
export const canBuzz = (): boolean => typeof navigator.vibrate === 'function';
