package keenward.core.progress;

/** Whoever waits for long work: is told how far it has come, and may stop it. */
@FunctionalInterface
public interface Progress {

  /** Waits in silence and never stops anything. */
  Progress SILENT = (what, done, total) -> true;

  /**
   * Told now and then, often enough that stopping feels immediate.
   *
   * @param what what is being done, in a few words
   * @param done how much of it is done
   * @param total how much there is; 0 when that is not known
   * @return whether to go on
   */
  boolean report(String what, long done, long total);

  /**
   * Reports, and ends the work when it is no longer wanted.
   *
   * @throws WorkStopped when the answer is to stop
   */
  default void check(String what, long done, long total) {
    if (!report(what, done, total)) {
      throw new WorkStopped(what);
    }
  }
}
