package keenward.core.dialogue.replay;

/** Ends a replay at the first place where it goes another way. Never leaves the replay. */
final class Refuted extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int atInstruction;
  private final String what;

  Refuted(int atInstruction, String what) {
    super(what, null, false, false);
    this.atInstruction = atInstruction;
    this.what = what;
  }

  int atInstruction() {
    return atInstruction;
  }

  String what() {
    return what;
  }
}
