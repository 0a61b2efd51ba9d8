import { Component, type ReactNode } from 'react';

interface Props {
  /** When this changes the fault is forgotten and the page tried anew. */
  readonly about: string;
  readonly children: ReactNode;
}

/** Keeps one broken page from taking the workbench with it; the project stays kept. */
export class CatchFault extends Component<Props, { readonly about: string | null }> {
  override state = { about: null };

  static getDerivedStateFromError() {
    return { about: 'fault' };
  }

  override componentDidCatch(thrown: unknown) {
    console.error(thrown);
  }

  override componentDidUpdate(before: Props) {
    if (before.about !== this.props.about && this.state.about) this.setState({ about: null });
  }

  override render() {
    if (!this.state.about) return this.props.children;
    return (
      <section className="stack" role="alert">
        <h1>This page broke.</h1>
        <p>Nothing is lost: the project is kept. Undo the last change, or open another page.</p>
        <div className="row">
          <button type="button" onClick={() => this.setState({ about: null })}>
            Try again
          </button>
        </div>
      </section>
    );
  }
}
