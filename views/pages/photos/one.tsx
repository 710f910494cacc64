import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Shot } from "./shot.tsx";
import { type PhotoShown, photoPath } from "./state.ts";

/** One photo as large as the screen, with Hold where it always is. */
export const PhotoPage = ({ screen, photo }: { readonly screen: Screen; readonly photo: PhotoShown }) => {
  const { guide, words } = screen;
  const { photos } = words;
  return (
    <JobScreen screen={screen} title={photos.one(photo.no)} class="one-photo" beside={[{ to: "photos", text: photos.all }]}>
      <Shot job={guide.job} photo={photo} words={words} />
      <p class="source">{photos.facts(photo.widthPx, photo.heightPx, photo.bytes)}</p>
      <a class="button" href={photoPath(guide.job, photo.hash)}>
        {photos.full}
      </a>
    </JobScreen>
  );
};
