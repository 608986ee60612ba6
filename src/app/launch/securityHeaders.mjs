/**
 * Everything comes from the app's own origin. Scripts and workers take addresses only from the app's own Trusted Types
 * policy, and markup from text is only ever empty (../trustedScript.ts). Styles set through the CSSOM, as React and Konva do, need no exception.
 */
const directives = {
  'default-src': "'self'",
  'img-src': "'self' data: blob:",
  'worker-src': "'self'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'strokespace default',
};

/** @param {Record<string, string>} all */
const policyText = (all) =>
  Object.entries(all)
    .map(([name, value]) => `${name} ${value}`)
    .join('; ');

/** The policy as a page may carry it itself; a page can't say who may frame it. */
export const pagePolicy = policyText(directives);

/** Sent with every response, the service worker's own included: a worker served without a policy may fetch anywhere. */
export const securityHeaders = {
  'content-security-policy': policyText({ ...directives, 'frame-ancestors': "'none'" }),
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
};
