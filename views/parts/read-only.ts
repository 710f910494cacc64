/** Why a job can be read and not driven: the first entry that nobody can vouch for, and what is wrong with it. */
export type ReadOnly = { readonly no: number; readonly why: "chain" | "replay" | "changed" };
