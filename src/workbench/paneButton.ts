/** The button that shows and hides the pane; the grid takes the room. */
export function paneButton(button: HTMLButtonElement, pane: HTMLElement): void {
  button.onclick = () => {
    pane.hidden = !pane.hidden;
    button.setAttribute("aria-expanded", String(!pane.hidden));
  };
}
