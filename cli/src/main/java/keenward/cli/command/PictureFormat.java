package keenward.cli.command;

/** How a result that can be drawn is printed. */
enum PictureFormat {
  /** For people. */
  text,
  /** For programs; the shape is in docs/reference/output.md. */
  json,
  /** A drawing of one floor. */
  svg
}
