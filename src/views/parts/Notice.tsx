import type { ReactNode } from 'react';
import { Icon, type IconName } from './Icon.tsx';

interface NoticeProps {
  readonly tone: 'news' | 'alarm';
  readonly title: string;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}

/** Something the user should know about, with what can be done; it covers nothing. */
export function Notice({ tone, title, children, actions }: NoticeProps) {
  const icon: IconName = tone === 'alarm' ? 'alert' : 'check';
  return (
    <section className={`notice ${tone}`} role={tone === 'alarm' ? 'alert' : 'status'}>
      <Icon name={icon} />
      <div className="notice-text">
        <strong>{title}</strong>
        <div>{children}</div>
      </div>
      {actions !== undefined && <div className="notice-actions">{actions}</div>}
    </section>
  );
}
