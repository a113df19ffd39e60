/** What part of the photo is seen: a zoom over "all of it", and the place in the middle of the stage. */
export interface View {
  /** 1 shows the whole photo. */
  readonly zoom: number;
  /** Middle of the view as a share of the photo's width and height, 0 to 1. */
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const WHOLE_PHOTO: View = { zoom: 1, x: 0.5, y: 0.5 };
export const LARGEST_ZOOM = 10;

function clamp(value: number, low: number, high: number): number {
  return low > high ? (low + high) / 2 : Math.min(high, Math.max(low, value));
}

/** Size of the whole photo fitted into the stage, CSS pixels. */
export function fittedSize(stage: Size, photo: Size): Size {
  const scale = Math.min(stage.width / photo.width, stage.height / photo.height);
  return { width: photo.width * scale, height: photo.height * scale };
}

/** Keeps the photo over the stage: no empty band beside it that panning could close. */
export function clampView(view: View, stage: Size, photo: Size): View {
  const zoom = clamp(view.zoom, 1, LARGEST_ZOOM);
  const fitted = fittedSize(stage, photo);
  const halfX = stage.width / 2 / (fitted.width * zoom);
  const halfY = stage.height / 2 / (fitted.height * zoom);
  return { zoom, x: clamp(view.x, halfX, 1 - halfX), y: clamp(view.y, halfY, 1 - halfY) };
}

/** Where the photo lies on the stage, CSS pixels from the stage's upper-left corner. */
export function photoPlace(view: View, stage: Size, photo: Size): Size & { left: number; top: number } {
  const fitted = fittedSize(stage, photo);
  const [width, height] = [fitted.width * view.zoom, fitted.height * view.zoom];
  return { width, height, left: stage.width / 2 - view.x * width, top: stage.height / 2 - view.y * height };
}

/** Moves the photo by CSS pixels, as a finger drags it. */
export function panBy(view: View, dx: number, dy: number, stage: Size, photo: Size): View {
  const { width, height } = photoPlace(view, stage, photo);
  return clampView({ ...view, x: view.x - dx / width, y: view.y - dy / height }, stage, photo);
}

/**
 * Enlarges about a point of the stage, which stays where it is unless the photo's edge forbids it.
 *
 * @param factor - More than 1 enlarges.
 * @param at - CSS pixels from the stage's upper-left corner.
 */
export function zoomAbout(
  view: View,
  factor: number,
  at: { readonly x: number; readonly y: number },
  stage: Size,
  photo: Size,
): View {
  const zoom = clamp(view.zoom * factor, 1, LARGEST_ZOOM);
  const before = photoPlace(view, stage, photo);
  const fitted = fittedSize(stage, photo);
  const [shareX, shareY] = [(at.x - before.left) / before.width, (at.y - before.top) / before.height];
  const x = shareX + (stage.width / 2 - at.x) / (fitted.width * zoom);
  const y = shareY + (stage.height / 2 - at.y) / (fitted.height * zoom);
  return clampView({ zoom, x, y }, stage, photo);
}
