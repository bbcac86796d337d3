package keenward.cli.command;

import java.io.PrintWriter;
import keenward.core.progress.Progress;

/**
 * Progress as one line that is written over, at a terminal only. Control-C ends the process, and so
 * the work.
 */
final class ProgressLine implements Progress, AutoCloseable {

  private static final long LEAST_NANOSECONDS_BETWEEN = 100_000_000;

  private final PrintWriter err;
  private final boolean shown;
  private long last;
  private boolean written;

  ProgressLine(Surroundings surroundings) {
    this.err = surroundings.err();
    this.shown = surroundings.atTerminal();
    this.last = System.nanoTime() - LEAST_NANOSECONDS_BETWEEN;
  }

  @Override
  public boolean report(String what, long done, long total) {
    long now = System.nanoTime();
    if (shown && now - last >= LEAST_NANOSECONDS_BETWEEN) {
      last = now;
      written = true;
      err.print("\r\u001b[K" + what + (total > 0 ? " " + done + " of " + total : " ..."));
      err.flush();
    }
    return true;
  }

  @Override
  public void close() {
    if (written) {
      err.print("\r\u001b[K");
      err.flush();
    }
  }
}
