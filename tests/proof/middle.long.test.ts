import { frozenOf, middleBrief } from "./fixtures.ts";
import { holds } from "./proofs.ts";

holds("a middle tent, 80×100 in five pieces", frozenOf(middleBrief()));
