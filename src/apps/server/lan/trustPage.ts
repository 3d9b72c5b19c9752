import type { Fingerprint } from "./fingerprint.ts";

/** How a telephone comes to trust this server. It stands alone: it is read before anything else of the bench may be. */
export function trustPage(authority: Fingerprint | null, addresses: readonly string[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Trust this workshop's computer</title>
<link rel="stylesheet" href="/trust.css">
</head>
<body>
<main>
<h1>Trust this workshop's computer</h1>
${authority ? toInstall(authority) : nothingToInstall}
<h2>${authority ? "4. " : ""}Open the bench</h2>
<ul>
${addresses.map((it) => `<li><a href="${it}">${it}</a></li>`).join("\n")}
</ul>
</main>
</body>
</html>
`;
}

const nothingToInstall =
  "<p>This computer shows a certificate that your telephone knows already. There is nothing to install.</p>";

/** Names of menus are from memory and change with every version; the words to look for are the same. */
const toInstall = ({ sha256, words }: Fingerprint): string => `
<p>Your telephone does not know this computer yet: it warns before it opens the bench, and lets it do less. Once the certificate of
the workshop is installed, it trusts this computer. That certificate vouches for names that end in .local, for localhost and for
addresses inside a local network. It cannot vouch for any other site.</p>
<h2>1. Take it</h2>
<p><a href="/authority.crt">The workshop's certificate</a></p>
<h2>2. Compare it</h2>
<p>When you install it, the telephone shows its SHA-256 fingerprint, often under “details”. It must be the one on the workshop's own
screen, in the terminal. If it differs, do not install it: somebody is in between. This page shows it too, but whoever is in between
could change the page.</p>
<p class="figures">${sha256.replaceAll(":", ":<wbr>")}</p>
<p>In words: <strong>${words.join(" ")}</strong></p>
<h2>3. Install it</h2>
<dl>
<dt>A telephone that takes the file</dt>
<dd>Settings, then search for “CA certificate”; install the file from the downloads. It asks for the screen lock.</dd>
<dt>A telephone or tablet that calls it a profile</dt>
<dd>Open the file, then Settings, General, VPN and device management, install the profile. Then General, About, Certificate trust
settings: switch it on. Both are needed.</dd>
<dt>A computer that asks for a store</dt>
<dd>Open the file, Install certificate, and choose the store “Trusted root certification authorities”.</dd>
<dt>A computer with a keychain</dt>
<dd>Open the file in it, then the certificate, Trust: Always trust.</dd>
<dt>A browser with a list of its own</dt>
<dd>In the browser's settings, search for “certificates”: import it under authorities, for web sites.</dd>
</dl>
<p>To undo it, remove “Turnsleft on …” from the same place.</p>`;

export const trustStyle = `:root { color-scheme: light dark; font: 1.125rem/1.5 system-ui, sans-serif; }
body { margin: 0; background: Canvas; color: CanvasText; }
main { max-width: 40rem; margin: 0 auto; padding: 1rem 1.25rem 3rem; }
h1 { font-size: 1.6rem; line-height: 1.2; }
h2 { font-size: 1.2rem; margin: 1.75rem 0 0.25rem; }
dt { font-weight: 600; margin-top: 0.75rem; }
dd { margin: 0; }
a { display: inline-block; padding: 0.6rem 0; overflow-wrap: anywhere; }
ul { list-style: none; padding: 0; margin: 0; }
.figures { font-family: ui-monospace, monospace; font-size: 1rem; overflow-wrap: anywhere; }
`;
