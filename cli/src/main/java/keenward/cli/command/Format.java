package keenward.cli.command;

/** How a result is printed. */
enum Format {
  /** For people. */
  text,
  /** For programs; the shape is in docs/reference/output.md. */
  json
}
