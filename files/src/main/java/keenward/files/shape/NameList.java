package keenward.files.shape;

import java.util.Collection;
import java.util.stream.Collectors;
import keenward.files.QuotedText;

/** A list of names of a file, for a message. */
public final class NameList {

  private static final int MOST = 30;

  private NameList() {}

  /** The names with commas between; dots after the thirtieth. */
  public static String of(Collection<String> names) {
    String first =
        names.stream().limit(MOST).map(QuotedText::visible).collect(Collectors.joining(", "));
    return names.size() > MOST ? first + ", ..." : first;
  }
}
