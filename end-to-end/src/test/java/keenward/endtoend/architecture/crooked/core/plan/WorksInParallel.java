package keenward.endtoend.architecture.crooked.core.plan;

import java.util.List;

/** Breaks the purity of core. */
public final class WorksInParallel {

  private WorksInParallel() {}

  static long count(List<String> texts) {
    return texts.parallelStream().distinct().count();
  }
}
