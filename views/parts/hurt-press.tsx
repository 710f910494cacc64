import { PRESSED } from "../../machines/install/commands.ts";
import type { Words } from "../text/words.ts";
import { SayForm, type Screen } from "./say-form.tsx";

/** The press that says that somebody is hurt; on a screen that is nobody's yet, one for each who may be at it. */
export const HurtPress = (screen: Screen) => {
  const { guide, me, words } = screen;
  const fields = { type: "hurt", words: PRESSED };
  if (me !== null)
    return (
      <SayForm screen={screen} fields={fields} class="hurt-one main">
        <button type="submit">{words.hurt.press}</button>
      </SayForm>
    );
  return (
    <section class="hurt-who">
      <h2>{words.hurt.who}</h2>
      {guide.people.map((p) => (
        <SayForm screen={{ ...screen, me: p.id }} fields={fields} class="hurt-one main">
          <button type="submit">{words.page.you(p.name, p.roleName)}</button>
        </SayForm>
      ))}
    </section>
  );
};

/** The way to it, from a page that has none of its own. */
export const HurtWay = ({ job, words }: { job: string; words: Words }) => (
  <a class="button hurt-way" href={`/jobs/${job}/more`}>
    {words.hurt.press}
  </a>
);
