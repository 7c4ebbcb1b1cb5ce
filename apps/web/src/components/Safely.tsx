import { Component, type ReactNode } from "react";
import { askAnew } from "../behaviour/lazyPart.js";
import type { PlannerState } from "../state/plannerState.js";
import { Mishap, type MishapOf } from "./Mishap.js";

interface SafelyProps {
  /** What is within, as it is named where it fails. */
  readonly of: MishapOf;
  /** All that the person entered, as it is now. */
  readonly entered: () => PlannerState;
  /** Where this becomes another, what failed is tried anew by itself. */
  readonly until?: unknown;
  /** Whether the person asked for what is within just now: then the words about it are brought before them. */
  readonly asked?: boolean;
  readonly children: ReactNode;
}

interface Failed {
  readonly why: "not fetched" | "broken";
}

/** What is thrown within is told in its place, with a way to try again and one to save what was entered; all around it goes on. */
export class Safely extends Component<SafelyProps, { readonly failed: Failed | undefined }> {
  override state: { readonly failed: Failed | undefined } = { failed: undefined };

  static getDerivedStateFromError(): { readonly failed: Failed } {
    return { failed: { why: "broken" } };
  }

  override componentDidCatch(): void {
    this.setState({ failed: { why: askAnew() ? "not fetched" : "broken" } });
  }

  override componentDidUpdate(before: SafelyProps): void {
    if (this.state.failed && before.until !== this.props.until) this.again();
  }

  readonly again = (): void => this.setState({ failed: undefined });

  override render(): ReactNode {
    const { failed } = this.state;
    if (!failed) return this.props.children;
    const { of, entered, asked = false } = this.props;
    return <Mishap of={of} why={failed.why} entered={entered} asked={asked} onAgain={this.again} />;
  }
}
