/** A number of the console, told from the box's beside it. */
export function ChannelNumber({ channel }: { readonly channel: number }) {
  return (
    <span className="channel-number">
      <span className="spoken">Channel </span>
      <span className="number-name" aria-hidden="true">
        Ch
      </span>
      {channel}
    </span>
  );
}
