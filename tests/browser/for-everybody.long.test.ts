import { everybodySees } from "../support/for-everybody.ts";

everybodySees(
  "axe finds nothing in light and dark, at a call in forced colors too, nor at a desk, and a glove hits what it is meant to",
  true,
);
