import { briefOf, frozenOf, SMALL } from "./fixtures.ts";
import { holds } from "./proofs.ts";

holds("a small tent, 20×20 in one piece", frozenOf(briefOf(SMALL)));
