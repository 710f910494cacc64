const ENTITIES: Readonly<Record<string, string>> = { amp: "&", quot: '"', "#39": "'", lt: "<", gt: ">" };
const plain = (text: string) => text.replaceAll(/&(amp|quot|#39|lt|gt);/g, (_, name: string) => ENTITIES[name]!);

/** The fields of the last form of a page as a browser would send them back, untouched. */
export function filled(page: string): Record<string, string> {
  const last = page.slice(page.lastIndexOf('<form method="post"'));
  const inputs = [...last.matchAll(/<input[^>]*? name="([^"]+)"[^>]*? value="([^"]*)"/g)].map((m) => [m[1]!, plain(m[2]!)]);
  const selects = [...last.matchAll(/<select[^>]*? name="([^"]+)"[^>]*>(.*?)<\/select>/gs)].map((m) => {
    const options = [...m[2]!.matchAll(/<option value="([^"]*)"( selected="")?/g)];
    return [m[1]!, plain((options.find((o) => o[2]) ?? options[0])![1]!)];
  });
  return Object.fromEntries([...inputs, ...selects]) as Record<string, string>;
}
