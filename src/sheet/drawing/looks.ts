import { filled, type Look, line } from '../mark.ts';

/** How the parts of a drawing look on white paper: what is placed is drawn strong, what is only there for the eye faint. */
export const looks = {
  deck: { ...line(0.5), fill: null },
  stairs: line(0.25),
  lane: line(0.2, 0.55, [1.2, 1.2]),
  feet: line(0.2, 0.35),
  shell: filled(0.93, 0.25),
  hoop: { ...line(0.35), fill: 0.97 },
  cymbal: line(0.3, 0.1),
  hardware: line(0.15, 0.5),
  seat: filled(0.9, 0.25),
  mic: filled(0.2, 0.1),
  stand: filled(1, 0.15, 0.3),
  box: filled(0.8, 0.3),
  run: line(0.18, 0.4, [1.6, 0.8]),
  figure: line(0.12, 0.7),
  dimension: line(0.13, 0.25),
  mark: line(0.2),
} as const satisfies Readonly<Record<string, Look>>;
