import { type RefObject, useEffect, useState } from 'react';

export type CameraState = 'starting' | 'on' | 'refused' | 'none' | 'insecure' | 'failed';

/** Milliseconds between two looks: codes change twice a second. */
const PAUSE = 80;

/** Runs the camera that looks away from the user into `video` and calls `onFrame` again and again, one call after the other. */
export function useCamera(
  video: RefObject<HTMLVideoElement | null>,
  onFrame: (frame: HTMLVideoElement) => Promise<void>,
): CameraState {
  const [state, setState] = useState<CameraState>('starting');
  useEffect(() => {
    let isOver = false;
    let stream: MediaStream | null = null;
    const run = async () => {
      // Without https the browser hands out no camera at all.
      if (!navigator.mediaDevices) return setState(window.isSecureContext ? 'none' : 'insecure');
      stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 960 } },
      });
      const shown = video.current;
      if (isOver || !shown) return stopped(stream);
      shown.srcObject = stream;
      await shown.play();
      setState('on');
      while (!isOver) {
        if (shown.videoWidth > 0) await onFrame(shown);
        await new Promise((resolve) => setTimeout(resolve, PAUSE));
      }
    };
    run().catch((error: unknown) => {
      if (!isOver) setState(stateOf(error));
    });
    return () => {
      isOver = true;
      if (stream) stopped(stream);
    };
  }, [video, onFrame]);
  return state;
}

function stopped(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

function stateOf(error: unknown): CameraState {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError') return 'refused';
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'failed';
}
