package keenward.core.progress;

/** Work was ended because it is no longer wanted; nothing of it may be used. */
public final class WorkStopped extends RuntimeException {

  /**
   * Says what was being done.
   *
   * @param what as last reported
   */
  public WorkStopped(String what) {
    super("stopped while " + what);
  }
}
