/** More phrases than anybody means by one line: a slip in the notation. */
const MAX_PHRASES = 5000;

/**
 * Every phrase that an expansion stands for, in the notation of the JSpeech Grammar Format (W3C Note of June 5, 2000): ways to say it
 * are divided by "|", parts that may be left out stand in brackets, and parts that go together in parentheses. Throws where brackets
 * do not match, or where it stands for more than anybody means.
 *
 * @example phrases("go back [one] | back") // ["go back one", "go back", "back"]
 */
export function phrases(expansion: string): readonly string[] {
  const marks = expansion.match(/[[\]()|]|[^[\]()|\s]+/g) ?? [];
  let at = 0;
  const fail = (): never => {
    throw new Error(`"${expansion}" is no expansion: something is wrong at mark ${at + 1}`);
  };
  const group = (close: string): string[][] => {
    const found = choice();
    if (marks[at++] !== close) fail();
    return found;
  };
  const part = (): string[][] => {
    const mark = marks[at++]!;
    if (mark === "(") return group(")");
    return mark === "[" ? [...group("]"), []] : [[mark]];
  };
  const sequence = (): string[][] => {
    let said: string[][] = [[]];
    while (at < marks.length && !["|", ")", "]"].includes(marks[at]!)) {
      const ways = part();
      said = said.flatMap((before) => ways.map((after) => [...before, ...after]));
      if (said.length > MAX_PHRASES) fail();
    }
    return said;
  };
  function choice(): string[][] {
    const ways = sequence();
    while (marks[at] === "|") {
      at++;
      ways.push(...sequence());
    }
    return ways;
  }
  const ways = choice();
  if (at < marks.length) fail();
  return [...new Set(ways.map((words) => words.join(" ")))].filter((phrase) => phrase !== "");
}
