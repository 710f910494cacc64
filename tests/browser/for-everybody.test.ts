import { everybodySees } from "../support/for-everybody.ts";

everybodySees("axe finds nothing on a phone, and a glove hits what it is meant to", false);
