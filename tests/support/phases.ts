/** In which phases a raise is refused at least once, by name. */
export const PHASES = [
  "anchorsSet",
  "inspected",
  "interiorRaised",
  "perimeterRaised",
  "sectionsJoined",
  "standing",
  "struck",
  "tensioned",
  "utilitiesMarked",
];
