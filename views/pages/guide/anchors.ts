/** Whether a call, or its gate, is about what the screening of the anchors came to: the page of the anchors says more of it. */
export const isOfAnchors = (id: string): boolean => id.startsWith("anchors.");
