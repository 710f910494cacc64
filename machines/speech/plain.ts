/** Words as they are compared: small letters, no commas or full stops between them, one space. Points in numbers stay. */
export const plain = (said: string): string =>
  said
    .normalize("NFC")
    .toLowerCase()
    .replaceAll(/[’]/g, "'")
    .replaceAll(/[.,!?;:…]+(?=\s|$)/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();

/** The same words as they were said, for numbers and texts: capitals and commas mean something there. */
export const trimmed = (said: string): string =>
  said
    .trim()
    .replace(/[.,!?;:…]+$/, "")
    .replaceAll(/\s+/g, " ");
