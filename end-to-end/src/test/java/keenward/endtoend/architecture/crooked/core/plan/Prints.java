package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class Prints {

  private Prints() {}

  static void print(String text) {
    System.out.println(text);
  }
}
