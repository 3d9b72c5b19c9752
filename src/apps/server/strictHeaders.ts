import type { Context, Next } from "hono";

/** What the page may do: run and draw what this server gives it, and talk to nobody else. No `eval`, nothing inline. */
const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** Features of a browser that the bench has no use for. Names Chromium does not know would be complained of in its console. */
const shutFeatures = [
  "accelerometer",
  "autoplay",
  "browsing-topics",
  "display-capture",
  "encrypted-media",
  "fullscreen",
  "gamepad",
  "geolocation",
  "gyroscope",
  "hid",
  "identity-credentials-get",
  "idle-detection",
  "keyboard-map",
  "local-fonts",
  "magnetometer",
  "microphone",
  "midi",
  "otp-credentials",
  "payment",
  "picture-in-picture",
  "publickey-credentials-create",
  "publickey-credentials-get",
  "screen-wake-lock",
  "serial",
  "storage-access",
  "sync-xhr",
  "usb",
  "window-management",
  "xr-spatial-tracking",
];

/** The headers of every answer. The camera stays open to the page itself, for the pitch in a photo. */
export const strictHeaders: Readonly<Record<string, string>> = {
  "Content-Security-Policy": contentPolicy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy": [...shutFeatures.map((it) => `${it}=()`), "camera=(self)"].join(", "),
};

/** Gives every answer those headers. */
export async function withStrictHeaders(c: Context, next: Next): Promise<void> {
  await next();
  for (const [name, value] of Object.entries(strictHeaders)) c.res.headers.set(name, value);
}
