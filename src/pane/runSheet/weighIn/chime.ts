import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { checkBox } from "../field";

const HIGH_HERTZ = 880;
const LOW_HERTZ = 660;
const SECONDS_A_TONE = 0.18;
const LOUDNESS = 0.2;

/** A box to tick for a sound, off at first, and the sound: a browser plays none before somebody has pressed something. */
export function chime(): { block: HTMLElement; play: () => void } {
  const { block, control } = checkBox("weigh-sound", weighInWords.sound, "");
  let context: AudioContext | undefined;
  const play = (): void => {
    if (!control.checked || context === undefined) return;
    const start = context.currentTime;
    [HIGH_HERTZ, LOW_HERTZ, HIGH_HERTZ].forEach((hertz, index) => tone(context as AudioContext, hertz, start + index * SECONDS_A_TONE));
  };
  control.addEventListener("change", () => {
    if (control.checked) context ??= new AudioContext();
    void context?.resume();
    play();
  });
  return { block, play };
}

function tone(context: AudioContext, hertz: number, from: number): void {
  const [oscillator, gain] = [context.createOscillator(), context.createGain()];
  oscillator.frequency.value = hertz;
  gain.gain.setValueAtTime(LOUDNESS, from);
  gain.gain.linearRampToValueAtTime(0, from + SECONDS_A_TONE);
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(from);
  oscillator.stop(from + SECONDS_A_TONE);
}
