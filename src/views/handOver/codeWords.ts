import type { Reading } from '../../session/handOver.ts';
import type { CameraState } from './useCamera.ts';

/** What the last code was when it does not count; null when all is well. */
export function seenWords({ seen, isBroken }: Pick<Reading, 'seen' | 'isBroken'>): string | null {
  if (isBroken) return 'All codes are here, but together they are not what was sent. Start over.';
  switch (seen) {
    case 'other':
      return 'That code is of another layout, or of a changed one. It was left out.';
    case 'foreign':
      return 'That code is not of this app. It was left out.';
    case 'newer':
      return 'That code was made by a newer version of this app. Update this tablet first.';
    case 'damaged':
      return 'That code was read wrongly. Keep pointing at it; it comes round again.';
    default:
      return null;
  }
}

/** The codes still to come, by number. */
export function missingWords(missing: readonly number[]): string {
  if (missing.length === 0) return '';
  return `Still to come: ${missing.slice(0, 24).join(', ')}${missing.length > 24 ? ' …' : ''}.`;
}

export function cameraWords(state: Exclude<CameraState, 'on'>): string {
  switch (state) {
    case 'starting':
      return 'Starting the camera. The browser may ask you to allow it.';
    case 'refused':
      return 'The camera is not allowed here. Allow it for this app in the browser’s settings, or read pictures of the codes.';
    case 'none':
      return 'This device has no camera that the browser can use. Read pictures of the codes instead, or hand the layout over as a file.';
    case 'insecure':
      return 'The camera works only over https or on this device itself. Read pictures of the codes instead, or hand the layout over as a file.';
    case 'failed':
      return 'The camera could not be started. Another app may be using it. Close this and try again.';
  }
}
