/** The sentence for a text that is no name of a person, by what is wrong with it. */
export const NAME_PROBLEM = { unseen: "unseenLetter", noLetter: "noLetter", likeAnId: "likeAnId" } as const;
