import { freshId } from '../../layout/edit/ids.ts';
import { changePatch } from '../../layout/edit/patch.ts';
import type { Layout } from '../../layout/layout.ts';
import { channelSchema } from '../../layout/patch.ts';
import {
  addChannel,
  type ChannelChange,
  changeChannel,
  removeChannel,
} from '../../patch/channels/editChannels.ts';
import type { InputRow } from '../../patch/inputList.ts';
import { edit } from '../../session/session.ts';
import { CheckField } from '../fields/CheckField.tsx';
import { COUNT, DECIBELS, HERTZ } from '../fields/measure.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { limitsOf } from '../fields/reading.ts';
import { SelectField } from '../fields/SelectField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { chosenOf, INSERT_OPTIONS } from './patchChoices.ts';
import { editPatch, useFestivalMics } from './usePatch.ts';

const { number: numberField, highPass: highPassField, pad: padField } = channelSchema.shape;

/** What can be set on a channel. */
export function ChannelFields({ row }: { readonly row: InputRow }) {
  const mics = useFestivalMics();
  const { id, name, phantom, polarity, highPass, highPassRange, pad, insert, notes } = row;
  const applied = (layout: Layout, change: ChannelChange) =>
    changePatch(layout, (from) => changeChannel(from, mics, id, change));
  const set = (label: string, change: ChannelChange) =>
    editPatch(`${name}: ${label}`, (from) => changeChannel(from, mics, id, change));
  const byHand =
    row.isNumbered || [phantom, polarity, highPass, pad, insert].some((value) => value.byHand);
  return (
    <div className="line-more channel-fields">
      <ChannelNumber row={row} />
      <CheckField
        label="48 V"
        checked={phantom.value}
        onSet={(on) => set('48 V', { phantom: on })}
      />
      <CheckField
        label="Polarity reversed"
        checked={polarity.value === 'reversed'}
        onSet={(on) => set('polarity', { polarity: on ? 'reversed' : 'normal' })}
      />
      <NumberField
        label="High-pass"
        step={`${name}: high-pass`}
        value={highPass.value ?? 0}
        measure={{ ...HERTZ, step: () => 5 }}
        limits={limitsOf(highPassField.unwrap())}
        apply={(layout, value) => applied(layout, { highPass: value })}
      />
      {highPassRange && (
        <p className="field-hint">
          0 is off. Usual here: {Math.round(highPassRange.low)} to {Math.round(highPassRange.high)}{' '}
          Hz.
        </p>
      )}
      <NumberField
        label="Pad"
        step={`${name}: pad`}
        value={pad.value}
        measure={DECIBELS}
        limits={limitsOf(padField.unwrap())}
        apply={(layout, value) => applied(layout, { pad: value })}
      />
      <SelectField
        label="Insert"
        value={insert.value}
        options={INSERT_OPTIONS}
        onChoose={(value) => set('insert', { insert: chosenOf(INSERT_OPTIONS, value) ?? null })}
      />
      <TextField
        label="Notes"
        value={notes}
        most={200}
        mayBeEmpty
        onSet={(text) => set('notes', { notes: text })}
      />
      {byHand && (
        <button
          type="button"
          onClick={() =>
            set('as usual', {
              number: null,
              phantom: null,
              polarity: null,
              highPass: null,
              pad: null,
              insert: null,
            })
          }
        >
          All as usual
        </button>
      )}
      <ChannelCopies row={row} />
    </div>
  );
}

function ChannelNumber({ row: { id, name, channel } }: { readonly row: InputRow }) {
  const mics = useFestivalMics();
  return (
    <>
      <NumberField
        label="Channel number"
        step={`${name}: channel number`}
        value={channel}
        measure={COUNT}
        limits={limitsOf(numberField.unwrap())}
        apply={(layout, number) =>
          changePatch(layout, (from) => changeChannel(from, mics, id, { number }))
        }
      />
      <p className="field-hint">The rows below count on from it.</p>
    </>
  );
}

/** One more channel of the same mic, or off with it. */
function ChannelCopies({ row }: { readonly row: InputRow }) {
  const mics = useFestivalMics();
  const { id, mic, name } = row;
  if (id !== mic) {
    return (
      <button
        type="button"
        className="danger"
        onClick={() => editPatch(`Remove ${name}`, (from) => removeChannel(from, id))}
      >
        Remove this channel
      </button>
    );
  }
  return (
    <button
      type="button"
      onClick={() =>
        edit(`Second channel of ${name}`, (layout) =>
          changePatch(layout, (from) =>
            addChannel(from, mics, mic, freshId(layout, `${mic}-channel-2`)),
          ),
        )
      }
    >
      Add a channel of this mic
    </button>
  );
}
