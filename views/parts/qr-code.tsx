import QRCode from "qrcode";

/** White around a code, in modules: ISO/IEC 18004 wants four. */
const QUIET = 4;

/** A text as a QR code, black on white in either scheme: cameras read no other. `label` is told in its place. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
  const { size } = modules;
  const dark = Array.from({ length: size * size }, (_, i) => i).filter((i) => modules.data[i]);
  const path = dark.map((i) => `M${(i % size) + QUIET} ${Math.floor(i / size) + QUIET}h1v1h-1z`).join("");
  const whole = size + 2 * QUIET;
  return (
    <svg class="qr-code" viewBox={`0 0 ${whole} ${whole}`} role="img" shape-rendering="crispEdges">
      <title>{label}</title>
      <rect width={whole} height={whole} fill="#ffffff" />
      <path d={path} fill="#000000" />
    </svg>
  );
}
