type Platform = { readonly name: string; readonly steps: readonly string[]; readonly remove: string };

/** Menus are named as of 2026; makers move them, so that each way says what to look for too. */
const PLATFORMS: readonly Platform[] = [
  {
    name: "iPhone, iPad",
    steps: [
      "Open this page in Safari, press the button above, and allow the profile to be downloaded.",
      "Settings, General, VPN & Device Management: open the downloaded profile.",
      "Compare the fingerprint under More Details, then press Install.",
      "Settings, General, About, Certificate Trust Settings: turn on full trust for the Ridgecall site authority. Without this step nothing changes.",
    ],
    remove: "Settings, General, VPN & Device Management: open the profile and press Remove Profile.",
  },
  {
    name: "Android",
    steps: [
      "Press the button above and keep the file.",
      'Settings, Security, Install a certificate, CA certificate. Menus differ: search the settings for "CA certificate". It may want a screen lock first.',
      "Read the warning, press Install anyway, and choose the file from the downloads.",
      "Look it up among the trusted credentials, under User, and compare the fingerprint. The phone may say from now on that the network may be monitored: it means this certificate.",
      "Use the browser that came with the phone. Another one may not look at what the phone trusts.",
    ],
    remove: "Settings, Security, Trusted credentials, User: open the Ridgecall site authority and press Remove.",
  },
  {
    name: "Windows",
    steps: [
      "Press the button above and open the file.",
      "Install Certificate, Current User, Place all certificates in the following store: Trusted Root Certification Authorities.",
      "Close the browser and open this page again. In the browser, beside the address, look at the certificate: under Details, its authority shows the fingerprint to compare.",
    ],
    remove: 'Search for "Manage user certificates": under Trusted Root Certification Authorities delete the Ridgecall site authority.',
  },
  {
    name: "macOS",
    steps: [
      "Press the button above and open the file: Keychain Access keeps it.",
      "Open the Ridgecall site authority there, compare the fingerprint, and under Trust choose Always Trust.",
    ],
    remove: "Delete it in Keychain Access.",
  },
  {
    name: "Linux",
    steps: [
      "Press the button above.",
      'In the browser\'s settings search for "certificates", open Authorities, import the file, and let it identify websites.',
      "For the whole machine, on Debian and its kin: copy the file to /usr/local/share/ca-certificates and run update-ca-certificates as root.",
    ],
    remove: "Delete it where it was imported, or take the file away and run update-ca-certificates --fresh as root.",
  },
  {
    name: "Firefox, on any of these",
    steps: [
      "It may keep a list of its own. Press the button above and keep the file.",
      "Settings, Privacy & Security, View Certificates, Authorities, Import: choose the file, view it to compare the fingerprint, and trust it to identify websites.",
    ],
    remove: "In the same list, select it and press Delete or Distrust.",
  },
];

/** How a phone is told to trust the site's network. */
export const trust = {
  title: "Trust this machine",
  notOn: "This server is not on the site's network yet. On the machine that serves, stop it and start it with: npm start -- --https",
  noCertificate: "There is no site authority here. Start the server with: npm start -- --https",
  intro:
    "A phone listens, and keeps the guide for where there is no signal, only over https from a machine that it trusts. Tell each phone once, before the job.",
  warns: "Until then the browser warns of this address. Go past the warning only to come to this page.",
  addresses: "This machine on the site's network",
  code: "The address as a QR code",
  noAddress:
    "No phone can reach this machine: it is on no network, or listens for itself only. Join the site's network and start the server again.",
  compare: "Compare first",
  compareText:
    "The terminal of the machine that serves shows this fingerprint when it starts. The phone must show the same under SHA-256. Compare with the terminal, not with this page: whoever forges one can forge the other. If they differ, do not install it, or take it off at once.",
  fingerprint: (hex: string) => hex,
  download: "Get the certificate",
  steps: "On your phone",
  platforms: PLATFORMS,
  means: "What it means",
  meansText:
    "Whoever holds the key file of this authority, on the machine that serves, could pretend to be any site to this phone. Keep that machine locked, give its https folder to nobody, and do not put it where others can read it.",
  takeOff: "After the season",
  takeOffText: "Take the certificate off each phone when the season is over, or when the machine is sold or lost:",
} as const;
