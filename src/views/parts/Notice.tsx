import type { ReactNode } from 'react';
import { Icon } from './Icon.tsx';

interface NoticeProps {
  readonly tone: 'news' | 'alarm';
  readonly title: string;
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}

/** Something the user should know about, with what can be done; it covers nothing. */
export function Notice({ tone, title, children, actions }: NoticeProps) {
  return (
    <section className={`notice ${tone}`} role={tone === 'alarm' ? 'alert' : 'status'}>
      {tone === 'alarm' && <Icon name="alert" />}
      <div className="notice-text">
        <strong>{title}</strong>
        <div>{children}</div>
      </div>
      {actions !== undefined && <div className="notice-actions">{actions}</div>}
    </section>
  );
}
