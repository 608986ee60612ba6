import { useState } from 'react';
import { takePlayer } from '../../layout/edit/stage.ts';
import type { Player } from '../../layout/player.ts';
import { edit } from '../../session/session.ts';
import { Group } from '../parts/Group.tsx';
import { useActions } from '../parts/useActions.ts';
import { useOpen } from '../parts/useOpen.ts';
import { useTask } from '../parts/useTask.ts';
import { playerFactsWords } from '../words/playerWords.ts';

/** A player who is set up in another layout is taken over whole, by one tap. */
export function OtherPlayers() {
  const actions = useActions();
  const task = useTask();
  const [players, setPlayers] = useState<readonly Player[] | null>(null);
  const look = () =>
    task.run('Looking for players', async () => {
      setPlayers(await actions.players());
    });
  return (
    <Group
      title="Use the player of another layout"
      hint="Body, stick, strokes and hands come along; the kit and the margin stay."
    >
      <div className="whole">
        {players === null ? (
          <button type="button" onClick={look} disabled={task.busy}>
            Look for players
          </button>
        ) : (
          <PlayerList players={players} />
        )}
        <p className="small" role="status">
          {task.failure}
        </p>
      </div>
    </Group>
  );
}

function PlayerList({ players }: { readonly players: readonly Player[] }) {
  const { layout } = useOpen();
  if (players.length === 0) return <p>No other layout is kept here.</p>;
  return (
    <ul className="lines framed">
      {players.map((player) => {
        const facts = playerFactsWords(player, layout.units);
        const isHere = takePlayer(layout, player) === layout;
        return (
          <li key={JSON.stringify(player)} className="line">
            <button
              type="button"
              className="line-button short"
              disabled={isHere}
              onClick={() => edit(`Player ${player.name}`, (from) => takePlayer(from, player))}
            >
              <span className="line-text">
                <span className="line-name">{player.name}</span>
                <span className="line-note">{facts}</span>
              </span>
              <span className="line-note">{isHere ? 'Plays here' : 'Use'}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
