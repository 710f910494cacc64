import { SITE_GROUPS, type SiteGroup } from "./fields.ts";
import { SiteFrame, type SitePage } from "./frame.tsx";

/** More than these are in a file: they are changed there. */
const MAX_LISTED = 60;

/** All that was entered of a site, each with the way to correct it, and what can be added. */
export const LinesPage = (page: SitePage) => {
  const { state, words } = page;
  const { siteForms: text, thisSite } = words;
  const { path, site, mayChange } = state;
  const all: readonly { readonly group: SiteGroup; readonly id: string; readonly name: string }[] = [
    ...site.buried.map((line) => ({ group: "buried" as const, id: line.id, name: thisSite.name({ is: "buried", line }) })),
    ...site.overhead.map((line) => ({ group: "overhead" as const, id: line.id, name: thisSite.name({ is: "overhead", line }) })),
    ...site.things.map((thing) => ({ group: "thing" as const, id: thing.id, name: thisSite.name({ is: "thing", thing }) })),
  ];
  const groups = SITE_GROUPS.filter((group) => mayChange || group === "buried" || group === "overhead" || group === "thing");
  return (
    <SiteFrame {...page} title={text.title}>
      <p>
        {text.intro} {site.wanted === null && text.beginAtA}
      </p>
      <nav class="ways" aria-label={text.add}>
        {groups.map((group) => (
          <a class="button" href={`${path}/lines?of=${group}`}>
            {text.groups[group]}
          </a>
        ))}
        {mayChange && (
          <a class="button" href={`${path}/import`}>
            {text.importTitle}
          </a>
        )}
      </nav>
      {all.length > 0 && <h2>{thisSite.all}</h2>}
      <ul class="site-list">
        {all.slice(0, MAX_LISTED).map(({ group, id, name }) => (
          <li>
            {mayChange ? (
              <a class="button" href={`${path}/lines?${new URLSearchParams({ of: group, id })}`}>
                {name}
              </a>
            ) : (
              name
            )}
          </li>
        ))}
      </ul>
      {all.length > MAX_LISTED && <p>{thisSite.farther(all.length - MAX_LISTED)}</p>}
      <a class="button main" href={path}>
        {text.back}
      </a>
    </SiteFrame>
  );
};
