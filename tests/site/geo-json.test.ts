import { describe, expect, it } from "vitest";
import { PROJECTION_ERROR_FT, roundingErrorFt } from "../../machines/site/geo-frame.ts";
import { type GeoMeaning, readGeoJson } from "../../machines/site/geo-json.ts";
import { SITE_LIMITS } from "../../machines/site/site-limits.ts";
import { en } from "../../views/text/en/en.ts";

const frame = { lonDeg: -105, latDeg: 40, baselineBearingDeg: 0 };
const read = (file: unknown, as?: GeoMeaning) =>
  readGeoJson(typeof file === "string" ? file : JSON.stringify(file), { frame, minToleranceIn: 18, ...(as ? { as } : {}) });
const problems = (file: unknown, as?: GeoMeaning) => {
  const found = read(file, as);
  return "problems" in found ? found.problems.map(({ path, code }) => [path, code]) : [];
};
const feature = (properties: object, geometry: unknown, more: object = {}) => ({ type: "Feature", properties, geometry, ...more });
const collection = (...features: unknown[]) => ({ type: "FeatureCollection", features });
const line = { type: "LineString", coordinates: [[-105, 40], [-105, 40.0001234]] }; // biome-ignore format: one line reads best
const ring = [[-105, 40], [-104.9995, 40], [-104.9995, 40.0005], [-105, 40.0005], [-105, 40]]; // biome-ignore format: one line reads best
const polygon = { type: "Polygon", coordinates: [ring] };
const gas = { what: "buried", kind: "gas", told: "ticket", widthIn: 4 };

describe("GeoJSON", () => {
  it("becomes lines, wires, things and areas in feet of the baseline", () => {
    const found = read(
      collection(
        feature(gas, line, { id: "main" }),
        feature({ what: "overhead", kv: 7.2 }, { type: "MultiLineString", coordinates: [line.coordinates, line.coordinates] }),
        feature({ what: "building" }, polygon),
        feature({ what: "tree", radiusFt: 2 }, { type: "Point", coordinates: [-104.9999, 40, 1600] }),
        feature({ what: "ground" }, polygon),
        feature({ what: "ticketArea" }, polygon),
      ),
    );
    if ("problems" in found) throw new Error(JSON.stringify(found.problems));
    const { buried, overhead, things, ground, ticketArea } = found.site;
    // 0.0001234° of latitude at 40° are 13.70 m: a degree is 111.03 km there.
    expect(buried).toMatchObject([{ id: "main", kind: "gas", widthIn: 4, points: [{ xFt: 0, yFt: 0 }, { xFt: 0, yFt: expect.closeTo(44.95, 1) }] }]); // biome-ignore format: one line reads best
    expect(overhead.map(({ kv }) => kv)).toEqual([7.2, 7.2]);
    expect(things.map(({ kind, shape }) => [kind, shape.is])).toEqual([["building", "polygon"], ["tree", "circle"]]); // biome-ignore format: one line reads best
    expect([ground?.corners.length, ticketArea?.corners.length]).toEqual([4, 4]);
  });
  it("is turned so that the baseline runs ahead", () => {
    const found = readGeoJson(JSON.stringify(feature(gas, line)), { frame: { ...frame, baselineBearingDeg: 90 }, minToleranceIn: 18 });
    // What is north of a baseline that runs east is on its left.
    expect(found).toMatchObject({ site: { buried: [{ points: [{}, { xFt: expect.closeTo(-44.95, 1), yFt: expect.closeTo(0, 5) }] }] } });
  });
  it("is as far off as its degrees have no more decimals, and everything says so", () => {
    const found = read(feature({ ...gas, errorFt: 1 }, line));
    const errorFt = roundingErrorFt(7) + PROJECTION_ERROR_FT;
    expect(found).toMatchObject({ roundingErrorFt: roundingErrorFt(7), site: { buried: [{ errorFt: 1 + errorFt }] } });
    expect(errorFt).toBeLessThan(0.03);
  });
  it("may be one thing as a whole, and then its properties are not read", () => {
    const as = { what: "buried", kind: "water", told: "private" } as const;
    const found = read(collection(feature({ OBJECTID: 7, material: "PVC" }, line), feature({ OBJECTID: 8 }, line)), as);
    expect(found).toMatchObject({ site: { buried: [{ kind: "water" }, { kind: "water" }] } });
    expect(read(line, as)).toMatchObject({ site: { buried: [{ kind: "water" }] } });
  });
});

describe("what is no GeoJSON, or not of this site", () => {
  it.each([
    ["no JSON", "gas", ["", "notJson"]],
    ["a number", "7", ["type", "notGeoJson"]],
    ["another type", { type: "Topology" }, ["type", "notGeoJson"]],
    ["a geometry that nobody says the meaning of", line, ["type", "notGeoJson"]],
    ["features that are no list", { type: "FeatureCollection", features: {} }, ["features", "notAList"]],
    ["another system", { ...collection(), crs: { type: "name", properties: { name: "EPSG:2232" } } }, ["crs", "otherSystem"]],
    ["an unknown meaning", feature({ what: "sewage" }, line), ["properties.what", "notKnown"]],
    ["a property that nobody knows", feature({ ...gas, width: 4 }, line), ["properties.width", "unknownField"]],
    ["no geometry", feature(gas, null), ["geometry.type", "noGeometry"]],
    ["a collection of geometries", feature(gas, { type: "GeometryCollection", geometries: [] }), ["geometry.type", "wrongGeometry"]],
    ["a line that is a polygon", feature(gas, polygon), ["geometry.type", "wrongGeometry"]],
    ["holes", feature({ what: "ground" }, { ...polygon, coordinates: [ring, ring] }), ["geometry.coordinates", "holes"]],
    ["a ring that is open", feature({ what: "ground" }, { ...polygon, coordinates: [ring.slice(1)] }), ["geometry.coordinates.0", "ringNotClosed"]],
    ["latitude first", feature(gas, { ...line, coordinates: [[40, -105], [40, -105.0001]] }), ["geometry.coordinates.0", "notAPosition"]],
    ["one point", feature(gas, { ...line, coordinates: [[-105.0000001, 40]] }), ["points", "tooFewPoints"]],
    ["an ocean away", feature(gas, { ...line, coordinates: [[-105, 40], [-9.0000001, 40]] }), ["points.1.alongFt", "tooFar"]],
    ["whole degrees", feature(gas, { ...line, coordinates: [[-105, 40], [-105, 41]] }), ["", "tooCoarse"]],
    ["two grounds", collection(feature({ what: "ground" }, polygon), feature({ what: "ground" }, polygon)), ["features.1.properties.what", "onlyOne"]],
  ])("%s is refused by where it stands", (_, file, wanted) => expect(problems(file)[0]).toEqual(wanted)); // biome-ignore format: rows read best
  it.each([
    [{ type: "name", properties: { name: "EPSG:2232" } }, "in another system (EPSG:2232). Save"],
    [{ type: "link", properties: { href: "https://example.com/crs/42" } }, "in another system (https://example.com/crs/42). Save"],
    [{ type: "name", properties: {} }, "in another system. Save"],
    [null, "in another system. Save"],
  ])("another system is named where it has a name: %j", (crs, sentence) => {
    const found = read({ ...collection(), crs });
    expect("problems" in found && found.problems.map((problem) => en.figures.site(problem))).toEqual([expect.stringContaining(sentence)]);
  });
  it("a mistake of a feature is told by its place in the file, and nothing of it is taken", () => {
    const file = collection(feature({ what: "building" }, polygon), feature({ ...gas, widthIn: -1 }, line));
    expect(problems(file)).toEqual([["features.1.widthIn", "tooSmall"]]);
  });
  it("more stretches than any site has are refused before they are laid flat", () => {
    const coordinates = Array.from({ length: SITE_LIMITS.maxSegments + 2 }, () => [-105, 40]);
    expect(problems(feature(gas, { type: "LineString", coordinates }))).toEqual([["geometry.coordinates", "tooManySegments"]]);
  });
});

describe("parts of one feature", () => {
  const lines = (count: number) => ({ type: "MultiLineString", coordinates: Array.from({ length: count }, () => line.coordinates) });
  const names = (...features: unknown[]) => {
    const found = read(collection(...features));
    if ("problems" in found) throw new Error(JSON.stringify(found.problems));
    return [...found.site.buried, ...found.site.overhead, ...found.site.things].map(({ id }) => id);
  };
  it("are named after it, each by its number", () => {
    expect(names(feature(gas, lines(3), { id: "main" }))).toEqual(["main", "main part 2", "main part 3"]);
    expect(names(feature({ ...gas, id: "side" }, lines(2)))).toEqual(["side", "side part 2"]);
    expect(names(feature({ what: "building" }, { type: "MultiPolygon", coordinates: [[ring], [ring]] }, { id: 7 }))).toEqual([
      "7",
      "7 part 2",
    ]);
  });
  it("take no name that another feature has", () => {
    expect(names(feature(gas, lines(2), { id: "main" }), feature(gas, line, { id: "main part 2" }))).toEqual([
      "main",
      "main part 3",
      "main part 2",
    ]);
    expect(names(feature(gas, line), feature(gas, line, { id: "buried 1" }))).toEqual(["buried 2", "buried 1"]);
  });
  it("keep within the length of a name", () => {
    const [first, second] = names(feature(gas, lines(2), { id: "n".repeat(SITE_LIMITS.maxNameLetters) }));
    expect([first!.length, second!.length, second!.endsWith("n part 2")]).toEqual([80, 80, true]);
  });
  it("two features of one name are still refused", () => {
    expect(problems(collection(feature(gas, line, { id: "main" }), feature(gas, line, { id: "main" })))).toEqual([
      ["features.1.id", "nameTwice"],
    ]);
  });
});

describe("a file that is too much", () => {
  const many = (of: string, count: number) => Array(count).fill(of).join(",");
  const multi = (type: string, of: string, count: number) => `{"type":"Feature","properties":{},"geometry":{"type":"${type}","coordinates":[${many(of, count)}]}}`; // biome-ignore format: one line reads best
  const as = { what: "buried", kind: "gas", told: "ticket" } as const;
  it.each([
    ["points", multi("LineString", "[-105,40]", 30_000), "tooManySegments"],
    ["features", `{"type":"FeatureCollection","features":[${many("{}", 40_000)}]}`, "tooManyNeighbors"],
    ["parts", multi("MultiLineString", "[]", 40_000), "tooManyNeighbors"],
    ["nothings", multi("MultiPoint", "null", 60_000), "tooManyNeighbors"],
    ["values", `{"type":"FeatureCollection","features":[${many("{}", 200_000)}]}`, "tooMuchInFile"],
    ["lists in lists", `${"[".repeat(300_000)}${"]".repeat(300_000)}`, "tooMuchInFile"],
    ["lists in lists that are not too many", `{"type":${"[".repeat(90_000)}${"]".repeat(90_000)}}`, "notGeoJson"],
  ])("of %s is refused with its limit, and never more is told than is read", (_, file, code) => {
    const found = read(file, as);
    expect("problems" in found && found.problems.map((problem) => problem.code)).toEqual([code]);
  });
  it("of properties of one feature is refused before any of them is told", () => {
    const more = Object.fromEntries(Array.from({ length: 50_000 }, (_, i) => [`p${i}`, i]));
    expect(problems(feature({ ...gas, ...more }, line))).toEqual([["properties", "tooMuchInFile"]]);
  });
  it("what stands in texts is not counted", () => {
    const note = `\\"${"[1,".repeat(80_000)}`;
    expect(problems(feature({ note }, line), as)).toEqual([]);
  });
});
