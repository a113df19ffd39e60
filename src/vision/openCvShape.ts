/** A matrix in OpenCV's own memory; must be given back with `delete`. */
export interface Mat {
  readonly rows: number;
  readonly cols: number;
  readonly data: Uint8Array;
  readonly data32S: Int32Array;
  readonly data32F: Float32Array;
  readonly data64F: Float64Array;
  delete(): void;
}

/** A list of matrices in OpenCV's own memory. */
export interface MatVector {
  size(): number;
  get(index: number): Mat;
  delete(): void;
}

export interface CvSize {
  readonly width: number;
  readonly height: number;
}

export interface CvPoint {
  readonly x: number;
  readonly y: number;
}

/** The part of OpenCV's interface used here; names are OpenCV's own. */
export interface OpenCv {
  readonly CV_8UC1: number;
  readonly CV_32SC1: number;
  readonly CV_32FC2: number;
  readonly CV_32FC1: number;
  readonly CV_32FC3: number;
  readonly INTER_AREA: number;
  readonly INTER_LINEAR: number;
  readonly BORDER_REFLECT_101: number;
  readonly MORPH_OPEN: number;
  readonly MORPH_TOPHAT: number;
  readonly MORPH_BLACKHAT: number;
  readonly MORPH_RECT: number;
  readonly MORPH_ELLIPSE: number;
  readonly DIST_L2: number;
  readonly DIST_MASK_PRECISE: number;
  readonly RETR_EXTERNAL: number;
  readonly CHAIN_APPROX_NONE: number;
  readonly CC_STAT_LEFT: number;
  readonly CC_STAT_TOP: number;
  readonly CC_STAT_WIDTH: number;
  readonly CC_STAT_HEIGHT: number;
  readonly CC_STAT_AREA: number;
  readonly Mat: new (rows?: number, columns?: number, type?: number) => Mat;
  readonly MatVector: new () => MatVector;
  readonly Size: new (width: number, height: number) => CvSize;
  resize(from: Mat, to: Mat, size: CvSize, fx: number, fy: number, interpolation: number): void;
  GaussianBlur(from: Mat, to: Mat, size: CvSize, sigmaX: number, sigmaY: number, border: number): void;
  getStructuringElement(shape: number, size: CvSize): Mat;
  morphologyEx(from: Mat, to: Mat, operation: number, element: Mat): void;
  connectedComponentsWithStats(
    from: Mat,
    labels: Mat,
    stats: Mat,
    centroids: Mat,
    connectivity: number,
    type: number,
  ): number;
  distanceTransform(from: Mat, to: Mat, distance: number, maskSize: number): void;
  findContours(from: Mat, contours: MatVector, hierarchy: Mat, mode: number, method: number): void;
  contourArea(contour: Mat): number;
  minAreaRect(points: Mat): { center: CvPoint; size: CvSize; angle: number };
  exceptionFromPtr(pointer: number): { msg: string };
}
