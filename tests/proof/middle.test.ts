import { frozenOf, middleBrief } from "./fixtures.ts";
import { proves } from "./proofs.ts";

proves("a middle tent, 80×100 in five pieces", frozenOf(middleBrief()));
