import { clientWords } from "../../parts/client-words.ts";

/** Longer sides are redrawn to this, in px, and the picture is written as JPEG of this quality. Common practice, no source. */
const LONGER_SIDE_PX = 1600;
const QUALITY = 0.8;
/** How long sending may take, in ms: 300 kB over a bad link. Common practice, no source. */
const SEND_MS = 90_000;

/** What the server says to a photo that it could read, or of one that it could not. */
type Answer = {
  readonly went?: string;
  readonly reply?: string;
  readonly to?: string;
  readonly problem?: string;
  readonly fields?: Record<string, string>;
};

/**
 * Makes a photo smaller before it is sent, upright and without what the camera wrote beside it, shows it, and keeps it until the
 * server has it. Pressed again it is the same photo under the same key, which is kept once; another photo has another key.
 */
export function sendPhotos(): void {
  const form = document.querySelector<HTMLFormElement>("form[data-photo]");
  if (!form) return;
  const picker = form.querySelector<HTMLInputElement>("input[type=file]")!;
  const key = form.querySelector<HTMLInputElement>("input[name=key]")!;
  const status = form.querySelector<HTMLElement>("[data-photo-status]")!;
  const keep = form.querySelector<HTMLButtonElement>("button[type=submit]")!;
  const { photo: words } = clientWords();
  const [firstKey, canvas] = [key.value, document.createElement("canvas")];
  let keys = 0;
  let ready: Promise<Blob> | null = null;
  const newKey = () => {
    key.value = `${firstKey}.${++keys}`;
  };

  picker.addEventListener("change", () => {
    const [file] = picker.files ?? [];
    if (!file) return;
    newKey();
    status.textContent = words.making;
    const mine = redrawn(file, canvas).then(
      (blob) => {
        if (ready === mine) status.before(canvas);
        return blob;
      },
      // No picture, or one that this browser cannot read: the server says which.
      () => {
        if (ready === mine) canvas.remove();
        return file;
      },
    );
    ready = mine;
    void mine.then((blob) => {
      if (ready === mine) status.textContent = `${words.ready} ${Math.ceil(blob.size / 1000)} kB`;
    });
  });

  form.addEventListener("submit", (event) => {
    if (!ready) return;
    event.preventDefault();
    if (!keep.disabled) void send(ready);
  });

  async function send(photo: Promise<Blob>): Promise<void> {
    keep.disabled = true;
    status.textContent = words.sending;
    const late = new AbortController();
    const timer = setTimeout(() => late.abort(), SEND_MS);
    try {
      const body = new FormData(form!);
      body.set("photo", await photo, "photo");
      const answer = await fetch(form!.action, { method: "POST", body, headers: { accept: "application/json" }, signal: late.signal });
      const told = (await answer.json()) as Answer;
      if (told.went === "done" && told.to !== undefined) return location.assign(told.to);
      // It was heard: what is sent from here on is something else.
      newKey();
      status.textContent = [told.reply ?? told.problem, ...Object.values(told.fields ?? {})].join(" ");
    } catch {
      status.textContent = words.notSent;
    } finally {
      clearTimeout(timer);
      keep.disabled = false;
    }
  }
}

/** A file as a smaller JPEG, drawn on a canvas. Rejects where the browser cannot read it. */
async function redrawn(file: File, canvas: HTMLCanvasElement): Promise<Blob> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGER_SIDE_PX / Math.max(picture.width, picture.height));
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const context = canvas.getContext("2d")!;
  // A JPEG has no glass: what was clear would be black.
  context.fillStyle = "white";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = "high";
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((done, failed) =>
    canvas.toBlob((blob) => (blob ? done(blob) : failed(new Error("no picture"))), "image/jpeg", QUALITY),
  );
}
