import { Component, type ReactNode } from 'react';

interface FaultPageProps {
  readonly children: ReactNode;
}

interface FaultPageState {
  readonly fault: string | null;
}

/**
 * The window's boundary: a fault of ours, in drawing or in a promise nobody waited for, ends up here and is
 * said plainly. Edits go to disk as they are made, so nothing but the view is lost.
 */
export class FaultPage extends Component<FaultPageProps, FaultPageState> {
  override state: FaultPageState = { fault: null };

  static getDerivedStateFromError(error: unknown): FaultPageState {
    return { fault: wordsOf(error) };
  }

  override componentDidMount(): void {
    addEventListener('unhandledrejection', this.#onRejection);
  }

  override componentWillUnmount(): void {
    removeEventListener('unhandledrejection', this.#onRejection);
  }

  readonly #onRejection = (event: PromiseRejectionEvent): void => {
    this.setState({ fault: wordsOf(event.reason) });
  };

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children;
    return (
      <main className="fault">
        <h1>Platpace met a fault of its own</h1>
        <p>
          This is ours to mend, not yours. Every edit up to this one is in the yard file. Open the yard again
          to go on.
        </p>
        <pre>{this.state.fault}</pre>
        <button type="button" className="do" onClick={() => location.reload()}>
          open the yard again
        </button>
      </main>
    );
  }
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}
