package keenward.core.rehearsal;

/** Small sets as the bits of a number. */
final class Bits {

  private Bits() {}

  static boolean has(long set, int member) {
    return ((set >> member) & 1) != 0;
  }
}
