import { tooMuchInText } from "../../machines/site/geo-count.ts";
import { fieldsIn } from "../../machines/site/geo-shapes.ts";

/** So many letters are shown again as they came. */
const MAX_AS_IT_CAME = 100_000;
/** So many at most: the points of the largest site with long names. */
const MAX_LETTERS = 1_000_000;

/**
 * A file as its form shows it again, so that a second press sends what was read: long ones with their shapes and without what is not read,
 * as to write six megabytes into a page holds everybody else up for a second. `isWhole`: all of it is said to be one thing, and no property
 * is read. Empty where it cannot be made short: it is chosen again then.
 */
export function shownAgain(text: string, isWhole: boolean): string {
  if (text.length <= MAX_AS_IT_CAME) return text;
  if (tooMuchInText(text)) return "";
  const short = written(text, isWhole);
  return short.length <= MAX_LETTERS ? short : "";
}

/** Empty of what is no JSON, and of what goes so deep that it cannot be written again. */
function written(text: string, isWhole: boolean): string {
  try {
    return JSON.stringify(shortened(JSON.parse(text), isWhole)) ?? "";
  } catch {
    return "";
  }
}

function shortened(file: unknown, isWhole: boolean): unknown {
  const { type, features, crs, id, properties, geometry, coordinates } = fieldsIn(file);
  if (type === "FeatureCollection") return { type, crs, features: Array.isArray(features) ? features.map((one) => shortened(one, isWhole)) : features }; // biome-ignore format: one line reads best
  if (type === "Feature") return { type, crs, id, properties: isWhole ? {} : properties, geometry: shortened(geometry, isWhole) };
  return coordinates === undefined ? undefined : { type, crs, coordinates };
}
