/** Figures as people say them: times, grams, millilitres. */
import type { Grams, Millilitres, Seconds } from '../units.ts';

/** 1 s below 20, 5 s below a minute, 10 s below three, 30 s below an hour, then half hours. */
export function roundedSeconds(seconds: Seconds): Seconds {
  const step = countedStep(seconds);
  return Math.round(seconds / step) * step;
}

export function countedStep(seconds: Seconds): Seconds {
  if (seconds < 20) return 1;
  if (seconds < 60) return 5;
  if (seconds < 180) return 10;
  return seconds < 3600 ? 30 : 1800;
}

export function roundedGrams(grams: Grams): Grams {
  return grams < 20 ? rounded(grams, 1) : Math.round(grams * 2) / 2;
}

export function roundedMl(ml: Millilitres): Millilitres {
  return Math.round(ml);
}

export function rounded(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale;
}
