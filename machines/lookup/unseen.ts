/** Letters that nobody sees, or that are no letters: controls, marks that turn the direction of text, fillers, line ends, private use. */
export const UNSEEN = /[\p{C}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}\u2800]/u;
