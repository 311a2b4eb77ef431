const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

/** What no page of Hightap uses, so that nothing that slips into one can. */
const permissionsPolicy = [
  'accelerometer',
  'camera',
  'display-capture',
  'geolocation',
  'gyroscope',
  'microphone',
  'midi',
  'payment',
  'publickey-credentials-get',
  'serial',
  'usb',
]
  .map((feature) => `${feature}=()`)
  .join(', ');

/** Sent with every answer. Scripts and styles come from files of our own, so nothing inline is ever allowed. */
export const securityHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentSecurityPolicy,
  'permissions-policy': permissionsPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'x-permitted-cross-domain-policies': 'none',
};

/** Beside the others where the address is https: a browser that saw it asks for nothing else for a year (RFC 6797). */
export const httpsOnly: Readonly<Record<string, string>> = {
  'strict-transport-security': 'max-age=31536000',
};
