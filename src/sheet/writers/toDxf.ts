import {
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import type { Drawing } from '../drawing/drawing.ts';
import { LAYERS, type Layer, type Mark } from '../mark.ts';

/** AutoCAD colour indices that layers are told apart by; 7 is black on white and white on black. */
const COLOURS: Readonly<Record<Layer, number>> = {
  DECK: 7,
  PLAYER: 9,
  FEET: 8,
  KIT: 5,
  STANDS: 3,
  MICS: 1,
  BOX: 6,
  CABLES: 4,
  DIMENSIONS: 2,
  LABELS: 7,
  FRAME: 7,
};

/** Letters of labels in the model, mm. */
const LETTERS = 40;

/** A drawing at its true size as DXF in mm: x and y of the drawing, one layer for each kind of thing, its labels as text beside what they name. */
export function toDxf({ marks, labels }: Drawing): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const layer of LAYERS) dxf.addLayer(layer, COLOURS[layer], 'CONTINUOUS');
  for (const mark of marks) addMark(dxf, mark);
  for (const { at, forms } of labels) {
    addMark(dxf, {
      kind: 'text',
      layer: 'LABELS',
      at: { x: at.x + LETTERS / 2, y: at.y },
      text: forms[0] ?? '',
      size: LETTERS,
      anchor: 'start',
      bold: false,
      ink: 0,
    });
  }
  return dxf.stringify();
}

function addMark(dxf: DxfWriter, mark: Mark): void {
  const on = { layerName: mark.layer };
  switch (mark.kind) {
    case 'line':
      dxf.addLWPolyline(
        mark.points.map(({ x, y }) => ({ point: point2d(x, y) })),
        { ...on, flags: mark.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
      return;
    case 'circle':
      dxf.addCircle(point3d(mark.centre.x, mark.centre.y), mark.radius, on);
      return;
    case 'text': {
      const at = point3d(mark.at.x, mark.at.y);
      // Control characters would end the line of the file that holds the text.
      const text = mark.text.replace(/\p{Cc}/gu, ' ');
      dxf.addText(at, mark.size, text, {
        ...on,
        horizontalAlignment: TextHorizontalAlignment.Left,
        verticalAlignment: TextVerticalAlignment.BaseLine,
      });
    }
  }
}
