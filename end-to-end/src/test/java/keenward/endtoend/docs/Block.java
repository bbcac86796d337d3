package keenward.endtoend.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A fenced block of a page.
 *
 * @param line number of its first line in the page, from 1
 * @param language what it is fenced as
 * @param use how a comment before it wants it to be used
 * @param file the file that the comment names; empty for none
 * @param text what it holds
 */
record Block(int line, String language, Use use, String file, String text) {

  /** What becomes of a block. */
  enum Use {
    /** It is read as what its language says. */
    SHOWN,
    /** It is the whole of a file. */
    FILE,
    /** It is added to a file's end. */
    ADD
  }

  private static final Pattern FENCED =
      Pattern.compile(
          "^(?:<!-- (file|add): (\\S+) -->\\n)?```(\\w+)\\n(.*?)^```$",
          Pattern.MULTILINE | Pattern.DOTALL);

  /** The blocks of {@code page} in their order. */
  static List<Block> in(String page) {
    List<Block> blocks = new ArrayList<>();
    Matcher matcher = FENCED.matcher(page);
    while (matcher.find()) {
      String use = Objects.requireNonNullElse(matcher.group(1), "shown");
      blocks.add(
          new Block(
              1 + (int) page.substring(0, matcher.start(4)).chars().filter(c -> c == '\n').count(),
              Objects.requireNonNull(matcher.group(3)),
              switch (use) {
                case "file" -> Use.FILE;
                case "add" -> Use.ADD;
                default -> Use.SHOWN;
              },
              Objects.requireNonNullElse(matcher.group(2), ""),
              Objects.requireNonNull(matcher.group(4))));
    }
    return blocks;
  }
}
