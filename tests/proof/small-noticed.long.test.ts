import { briefOf, frozenOf, SMALL } from "./fixtures.ts";
import { proves } from "./proofs.ts";

proves("a small tent, 20×20 in one piece", frozenOf(briefOf(SMALL)));
