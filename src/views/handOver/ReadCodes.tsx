import { useCallback, useRef, useState } from 'react';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';
import { cameraWords, missingWords, seenWords } from './codeWords.ts';
import { pictureOf } from './pictureOf.ts';
import { useCamera } from './useCamera.ts';
import { type Codes, useCodeReader } from './useCodeReader.ts';

/** A button that reads a layout off another tablet's screen. `onText` gets the layout's text once all codes are there. */
export function ReadCodes({ onText }: { readonly onText: (text: string) => void }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" onClick={() => setOpen(true)}>
        <Icon name="target" /> Read codes
      </button>
      {isOpen && (
        <Dialog title="Read codes off another tablet" onClose={() => setOpen(false)} wide>
          <Reader
            onText={(text) => {
              setOpen(false);
              onText(text);
            }}
          />
        </Dialog>
      )}
    </>
  );
}

function Reader({ onText }: { readonly onText: (text: string) => void }) {
  const codes = useCodeReader(onText);
  return (
    <div className="read-codes">
      <p>
        On the other tablet: open the layout, then “Pages” and “Hand over”. Hold this one so that
        the whole code is in the picture, until all are read.
      </p>
      <Camera look={codes.look} />
      <Progress codes={codes} />
      <PictureFiles look={codes.look} />
    </div>
  );
}

function Camera({ look }: Pick<Codes, 'look'>) {
  const video = useRef<HTMLVideoElement>(null);
  const onFrame = useCallback(
    (frame: HTMLVideoElement) =>
      look(pictureOf(frame, { width: frame.videoWidth, height: frame.videoHeight })),
    [look],
  );
  const state = useCamera(video, onFrame);
  return (
    <>
      <video
        ref={video}
        className="camera"
        hidden={state !== 'on'}
        muted
        playsInline
        aria-label="What the camera sees"
      />
      {state !== 'on' && (
        <p role={state === 'starting' ? 'status' : 'alert'}>{cameraWords(state)}</p>
      )}
    </>
  );
}

function Progress({ codes: { reading, startOver } }: { readonly codes: Codes }) {
  const said = reading && seenWords(reading);
  return (
    <div className="read-progress" role="status">
      {reading?.count == null ? (
        <p>No code read yet.</p>
      ) : (
        <>
          <progress max={reading.count} value={reading.count - reading.missing.length} />
          <p>
            {reading.count - reading.missing.length} of {reading.count} codes read.{' '}
            {missingWords(reading.missing)}
          </p>
        </>
      )}
      {said && <p className="field-problem">{said}</p>}
      {reading?.count != null && (reading.seen === 'other' || reading.isBroken) && (
        <button type="button" onClick={startOver}>
          Start over
        </button>
      )}
    </div>
  );
}

function PictureFiles({ look }: Pick<Codes, 'look'>) {
  const input = useRef<HTMLInputElement>(null);
  const [unreadable, setUnreadable] = useState<readonly string[]>([]);
  const lookAt = async (files: readonly File[]) => {
    const bad: string[] = [];
    for (const file of files) {
      try {
        const image = await createImageBitmap(file);
        await look(pictureOf(image, image));
        image.close();
      } catch {
        bad.push(file.name);
      }
    }
    setUnreadable(bad);
  };
  return (
    <div className="page-part">
      <button type="button" onClick={() => input.current?.click()}>
        <Icon name="load" /> Or read pictures of the codes
      </button>
      <input
        ref={input}
        type="file"
        hidden
        multiple
        accept="image/*"
        aria-label="Pictures of codes"
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          void lookAt(files);
        }}
      />
      {unreadable.length > 0 && (
        <p className="field-problem" role="alert">
          No pictures that can be opened: {unreadable.join(', ')}. Expected PNG, JPEG or WebP files.
        </p>
      )}
    </div>
  );
}
