import { regions } from "../regions.ts";

/**
 * Beside a form with a tent in it: once something is typed the plan on the page is that of before, and says so, until the
 * plan of what is typed has come in. Fields that are wrong are marked for those who do not see it.
 */
export function followPlan(): void {
  const part = document.querySelector(".tent-part");
  const plan = document.getElementById(regions.tentPlan);
  if (!part || !plan) return;
  let typed = 0;
  let sent = 0;
  part.addEventListener("input", () => {
    typed++;
    part.setAttribute("data-old", "");
  });
  part.addEventListener("htmx:before:request", () => {
    sent = typed;
  });
  new MutationObserver(() => {
    // Something was typed while this plan was on its way: another one will come.
    if (sent === typed) part.removeAttribute("data-old");
    requestAnimationFrame(() => markWrong(part));
  }).observe(plan, { childList: true });
}

function markWrong(part: Element): void {
  for (const field of part.querySelectorAll("[aria-describedby]")) {
    const said = document.getElementById(field.getAttribute("aria-describedby") ?? "");
    if (said?.textContent) field.setAttribute("aria-invalid", "true");
    else field.removeAttribute("aria-invalid");
  }
}
