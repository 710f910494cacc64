import { withAllParts } from "../support/all-parts.ts";
import { frozenOf } from "./fixtures.ts";
import { proves } from "./proofs.ts";

proves("a small tent of which all is told: its site, its anchors, a forecast and a weather plan", frozenOf(withAllParts()));
