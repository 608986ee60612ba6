import { Stage } from 'konva/lib/Stage.js';

/**
 * The stage empties its container through `innerHTML`, which the app's content policy refuses (Trusted Types). The container
 * is given a way to be emptied without parsing any text. Call before the first stage is made.
 */
export function keepStageTrusted(): void {
  const build = Stage.prototype._buildDOM;
  Stage.prototype._buildDOM = function buildWithoutText(this: Stage): void {
    const container = this.container();
    Object.defineProperty(container, 'innerHTML', {
      configurable: true,
      set: () => container.replaceChildren(),
    });
    build.call(this);
    Reflect.deleteProperty(container, 'innerHTML');
  };
}
