/** What a sentence is told with: people by name, times in the zone of the site. */
export type Teller = { readonly name: (id: string) => string; readonly zone: string };
