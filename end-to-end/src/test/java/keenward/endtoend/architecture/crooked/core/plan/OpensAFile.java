package keenward.endtoend.architecture.crooked.core.plan;

import java.io.File;
import java.nio.file.Path;

/** Breaks the purity of core. */
public final class OpensAFile {

  private OpensAFile() {}

  static File open(String name) {
    return Path.of(name).toFile();
  }
}
