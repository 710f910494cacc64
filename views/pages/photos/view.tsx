import { MAX_PHOTO_TEXT } from "../../../machines/install/photo.ts";
import { mayAsk } from "../../../machines/install/rights.ts";
import { Wrong } from "../../parts/fields.tsx";
import { JobScreen, Way } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { wrongId } from "../../regions.ts";
import { Shot } from "./shot.tsx";
import type { GateToShow, PhotoForm, PhotoShown } from "./state.ts";

type Props = {
  readonly screen: Screen;
  readonly shown: readonly PhotoShown[];
  readonly gates: readonly GateToShow[];
  readonly form: PhotoForm;
};

/** Photos of a job: one more, and those there are, the last one first. */
export const PhotosPage = ({ screen, shown, gates, form }: Props) => {
  const { guide, me, words } = screen;
  const { photos } = words;
  const role = guide.people.find(({ id }) => id === me)?.role;
  return (
    <JobScreen screen={screen} title={photos.title} class="photos">
      {form.message !== null && (
        <p class="alarm" role="status">
          {form.message}
        </p>
      )}
      {role === undefined ? (
        <Way screen={screen} to="people" text={photos.whose} />
      ) : mayAsk("photo").includes(role) ? (
        <TakePhoto screen={screen} gates={gates} form={form} />
      ) : (
        <p>{photos.notTrainee}</p>
      )}
      <h2>{photos.soFar(shown.length)}</h2>
      {shown.length > 0 && (
        <ul class="shots">
          {[...shown].reverse().map((photo) => (
            <li>
              <a href={`/jobs/${guide.job}/photos?entry=${photo.no}`}>
                <Shot job={guide.job} photo={photo} words={words} />
              </a>
            </li>
          ))}
        </ul>
      )}
    </JobScreen>
  );
};

const TakePhoto = ({ screen: { guide, me, newKey, words }, gates, form }: Omit<Props, "shown">) => {
  const { photos } = words;
  return (
    <form method="post" action={`/jobs/${guide.job}/photo`} enctype="multipart/form-data" class="take-photo" data-photo>
      <input type="hidden" name="as" value={me ?? ""} />
      <input type="hidden" name="seen" value={guide.revision} />
      <input type="hidden" name="key" value={newKey()} />
      <label>
        {photos.take}
        <input type="file" name="photo" accept="image/*" capture="environment" required />
      </label>
      <p class="status" role="status" data-photo-status></p>
      <label>
        {photos.shows}
        <input name="text" value={form.text} maxlength={MAX_PHOTO_TEXT} autocomplete="off" {...told("text", form)} />
        <Wrong name="text" problems={form.problems} />
      </label>
      <label>
        {photos.of}
        <select name="gate" {...told("gate", form)}>
          {gates.map(({ id, say }) => (
            <option value={id} selected={id === form.gate}>
              {say}
            </option>
          ))}
          <option value="" selected={form.gate === ""}>
            {photos.site}
          </option>
        </select>
        <Wrong name="gate" problems={form.problems} />
      </label>
      <button type="submit" class="main">
        {photos.keep}
      </button>
      <p class="source">{photos.opensNothing}</p>
    </form>
  );
};

const told = (name: string, { problems }: PhotoForm) => ({
  "aria-describedby": wrongId(name),
  "aria-invalid": problems[name] ? ("true" as const) : undefined,
});
