/** A ref that puts the focus on what has just appeared in answer to a key or tap; undefined leaves it where it is. */
export const takeFocus = (isAnswer: boolean) => (isAnswer ? focus : undefined);

const focus = (element: HTMLElement | null) => element?.focus();
