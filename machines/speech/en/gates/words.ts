/**
 * What crews say at a gate, each as an expansion (see `phrases`): `things` is what it asks about and the words around it, `so` says
 * that it is as it should be, or what is counted or measured, and `not` says that it is not. Where a question asks two things, what
 * answers one of them is a thing.
 */
export type GateWords = { readonly things?: string; readonly so?: string; readonly not?: string };
export type GateWordsByKey = Readonly<Record<string, GateWords>>;
