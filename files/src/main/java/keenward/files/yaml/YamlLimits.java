package keenward.files.yaml;

/** What a file may hold at most. */
public final class YamlLimits {

  /** Bytes of a file: 4 MiB. */
  public static final int BYTES = 4 * 1024 * 1024;

  /** Maps and lists inside each other. */
  public static final int DEPTH = 64;

  /** Characters (code points) of one value: 64 Ki. */
  public static final int SCALAR = 64 * 1024;

  /** Characters (code points) of one name. */
  public static final int NAME = 200;

  private YamlLimits() {}
}
