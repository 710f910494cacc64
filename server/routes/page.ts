/** A whole page: without a doctype a browser falls back to old rules. */
export const page = async (node: { toString: () => string | Promise<string> }): Promise<string> =>
  `<!DOCTYPE html>${await node.toString()}`;
