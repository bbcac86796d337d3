package keenward.endtoend.architecture.crooked.core.plan;

import java.util.List;

/** Breaks the purity of core. */
public final class PrintsByReference {

  private PrintsByReference() {}

  static void print(List<String> texts) {
    texts.forEach(System.out::println);
  }
}
