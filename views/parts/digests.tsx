import { shownDigest } from "../../machines/digest/short-digest.ts";
import type { Digests } from "../pages/proof/state.ts";
import type { Words } from "../text/words.ts";

type Props = { readonly record: Digests["record"]; readonly words: Words };

/** What of a record can be written down by hand, up to an entry. */
export const RecordDigest = ({ record: { no, hash }, words: { proof } }: Props) => (
  <p class="digest">
    {proof.soFar(no)} <code>{shownDigest(hash)}</code>
  </p>
);

/** The same of the house stream; nothing where it has no entry yet. */
export const HouseDigest = ({ house, words: { proof } }: { house: Digests["house"]; words: Words }) =>
  house && (
    <p class="digest">
      {proof.houseSoFar(house.day)} <code>{shownDigest(house.hash)}</code>
    </p>
  );
