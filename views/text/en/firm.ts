/** What the firm keeps from job to job. */
export const firm = {
  title: "People the firm knows",
  told: "They are offered for the next job. Whoever is taken off stays on the jobs they were on; what they learned is erased.",
  nobody: "Nobody yet. Whoever is on a job is offered for the next one.",
  takeOff: "Take off",
  takeOffName: (name: string) => `Take ${name} off`,
  toCrew: "Back to the crew",
} as const;
