/**
 * Reading aloud with the device's own voices only: a voice that needs the network would fall silent in the sewing
 * room. One sentence an utterance, because long ones stop unsaid in some browsers. Silent where nothing can speak.
 */

const synth = (): SpeechSynthesis | undefined => globalThis.speechSynthesis;

/** Can this device speak at all? The voices may still be loading. */
export const canSpeak = (): boolean => synth() !== undefined && 'SpeechSynthesisUtterance' in globalThis;

/** The voice to read with: on the device, in the wanted language, else none (the device then chooses). */
export function chooseVoice(
  voices: readonly Pick<SpeechSynthesisVoice, 'localService' | 'lang' | 'default'>[],
  language: string,
): number {
  const start = language.slice(0, 2).toLowerCase();
  const fits = (v: Pick<SpeechSynthesisVoice, 'localService' | 'lang'>): boolean =>
    v.localService && v.lang.toLowerCase().startsWith(start);
  const best = voices.findIndex((v) => fits(v) && v.default);
  return best >= 0 ? best : voices.findIndex(fits);
}

/** Says the sentences one after the other, in place of whatever was being said. Call it from a touch or a key. */
export function sayAloud(sentences: readonly string[], language = 'en'): void {
  const speaker = synth();
  if (!speaker || !canSpeak()) return;
  try {
    speaker.cancel();
    const voices = speaker.getVoices();
    const chosen = voices[chooseVoice(voices, language)];
    // Voices are known and none is on the device: better silent than stuck.
    if (!chosen && voices.length > 0) return;
    for (const sentence of sentences) {
      const utterance = new SpeechSynthesisUtterance(sentence);
      utterance.lang = chosen?.lang ?? language;
      if (chosen) utterance.voice = chosen;
      utterance.rate = 0.95;
      speaker.speak(utterance);
    }
  } catch {
    // Speech is an extra; the card says it all.
  }
}

/** Stops reading. */
export const hush = (): void => synth()?.cancel();
