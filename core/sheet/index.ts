export type {
  ClipMark,
  PageColour,
  PageMark,
  PageStroke,
  PageSubpath,
  PathMark,
  PictureMark,
  SheetPage,
  TextMark,
} from './page.ts';
