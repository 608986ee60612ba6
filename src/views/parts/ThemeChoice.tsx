import { prefer, useSession } from '../../session/session.ts';
import { Icon } from './Icon.tsx';

/** Dark for the stage, light for daylight. */
export function ThemeChoice() {
  const theme = useSession((state) => state.preferences.theme);
  const other = theme === 'dark' ? 'light' : 'dark';
  return (
    <button type="button" className="sign-only" onClick={() => prefer({ theme: other })}>
      <Icon name={other} />
      <span className="sign-text">
        {other === 'light' ? 'Light' : 'Dark'}
        <span className="spoken"> screen</span>
      </span>
    </button>
  );
}
