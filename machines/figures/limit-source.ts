/**
 * Where a figure comes from: what was published, or, in code, common practice without a source, memory, the tent's sheet, the
 * job's brief. A figure from memory may shut a gate, and never opens one.
 */
export type Source = { readonly title: string; readonly section: string } | "practice" | "memory" | "sheet" | "brief";
