/** The lead goes from one to another. */
export const handOver = {
  title: "Hand over the lead to",
  to: (name: string, role: string) => `Lead to ${name}, ${role}`,
  gone: (lead: string) => `${lead}'s phone gone?`,
  take: "I lead now",
  because: "the lead is handed over",
  isLead: (name: string) => `${name} has the lead already.`,
  mayNot: (name: string, role: string) => `${name}, ${role}, can't take the lead. Only a deputy or a competent person can.`,
} as const;
