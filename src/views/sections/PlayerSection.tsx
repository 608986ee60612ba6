import { PlayerFields } from '../player/PlayerFields.tsx';

/** Who plays. */
export function PlayerSection() {
  return (
    <>
      <h2 className="spoken">Player</h2>
      <PlayerFields />
    </>
  );
}
