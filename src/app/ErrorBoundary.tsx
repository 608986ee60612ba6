import { Component, type ReactNode } from 'react';
import { session } from '../session/session.ts';
import { LIST_ADDRESS } from './address.ts';
import { exportOpen } from './exportOpen.ts';
import { messageOf } from './messageOf.ts';

interface ErrorBoundaryProps {
  /** What could not be drawn, as in `The plan`. */
  readonly what: string;
  /** Whether it is all of the page, or a part of it. */
  readonly extent: 'page' | 'part';
  readonly children: ReactNode;
}

/** Stands in for a part of the page that can't be drawn, so that nothing is ever blank and what is open can be brought out. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, { readonly error: unknown }> {
  override state = { error: null as unknown };

  static getDerivedStateFromError(error: unknown) {
    return { error: error ?? new Error('no reason was given') };
  }

  override render(): ReactNode {
    if (this.state.error === null) return this.props.children;
    const Heading = this.props.extent === 'page' ? 'h1' : 'h2';
    return (
      <section className="broken" role="alert">
        <Heading>{this.props.what} can't be shown</Heading>
        <p>
          Something in the app failed: {messageOf(this.state.error)}. What was saved is not touched.
        </p>
        <div className="buttons">
          {session.getState().open && (
            <button type="button" className="primary" onClick={exportOpen}>
              Export this layout
            </button>
          )}
          <button type="button" onClick={() => this.setState({ error: null })}>
            Try again
          </button>
          <button type="button" onClick={() => location.reload()}>
            Load the page again
          </button>
          <button type="button" onClick={() => location.assign(LIST_ADDRESS)}>
            Go to the list of layouts
          </button>
        </div>
      </section>
    );
  }
}
