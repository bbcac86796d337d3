package keenward.files.panel;

import keenward.core.quantities.Span;

/** Times in whole tenths of a second. */
final class Tenths {
  private static final long MOST = 100_000_000;

  private Tenths() {}

  static int of(Faults faults, String pointer, Span span) {
    if (span.milliseconds() % 100 != 0 || span.milliseconds() / 100 > MOST) {
      faults.add(
          pointer,
          "the time " + span.written(),
          "a time to the tenth of a second, of at most 100 days",
          "round it to what was measured");
      return 0;
    }
    return (int) (span.milliseconds() / 100);
  }
}
