package keenward.files.yaml;

/** An edit that does not fit the file; caught by the splicer. */
final class EditRefusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String path;
  private final String what;
  private final String expected;

  EditRefusal(String path, String what, String expected) {
    super(path + ": " + what, null, false, false);
    this.path = path;
    this.what = what;
    this.expected = expected;
  }

  String path() {
    return path;
  }

  String what() {
    return what;
  }

  String expected() {
    return expected;
  }
}
