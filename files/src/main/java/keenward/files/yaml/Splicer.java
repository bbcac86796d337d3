package keenward.files.yaml;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Optional;
import keenward.files.Problem;
import keenward.files.QuotedText;

/**
 * Edits a file by cutting and pasting its text at the places of its nodes, so that comments, blank
 * lines, line ends and the way everything else is written stay. The new text is read again and
 * compared with the tree intended; an edit that does not give exactly that is refused.
 */
public final class Splicer {

  private Splicer() {}

  /** Makes one edit. */
  public static EditResult apply(YamlDocument document, Edit edit) {
    try {
      YamlNode intended = IntendedTree.after(document, edit);
      String text = TextCut.of(document, edit).apply(document.text());
      return check(document, edit, text, intended);
    } catch (EditRefusal refusal) {
      return new EditResult.Refused(
          problem(document, refusal.path(), refusal.what(), refusal.expected()));
    }
  }

  private static EditResult check(
      YamlDocument document, Edit edit, String text, YamlNode intended) {
    YamlReading reading = YamlReader.read(document.file(), text.getBytes(UTF_8));
    Optional<YamlDocument> read = reading.document();
    if (reading.problems().isEmpty()
        && read.isPresent()
        && YamlNode.sameContent(read.get().root(), intended)) {
      return new EditResult.Done(read.get());
    }
    String why =
        reading.problems().isEmpty()
            ? "would change more than it should"
            : "would leave a file that cannot be read: " + reading.problems().getFirst().what();
    return new EditResult.Refused(problem(document, place(edit), "this edit " + why, ""));
  }

  private static String place(Edit edit) {
    return switch (edit) {
      case Edit.SetValue set -> set.path();
      case Edit.InsertEntry insert -> insert.map();
      case Edit.RemoveEntry remove -> remove.path();
      case Edit.RenameKey rename -> rename.path();
    };
  }

  private static Problem problem(YamlDocument document, String path, String what, String expected) {
    Span place = document.nearestPlace(path);
    String shown = path.isEmpty() ? "the file" : QuotedText.visible(path);
    return new Problem(
        document.file(),
        place.line(),
        place.column(),
        shown + ": " + what,
        expected,
        "make the change by hand");
  }
}
