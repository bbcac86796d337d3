package keenward.core.dialogue.description;

import java.util.List;
import java.util.Optional;

/** A line of a display: fixed text and places that the state fills. */
public record Template(List<Part> parts) {
  public Template {
    parts = List.copyOf(parts);
  }

  /** A piece of a line. Widths are in characters; 0 means as many as needed. */
  public sealed interface Part {}

  /** Fixed text. */
  public record Literal(String text) implements Part {}

  /** What is being typed, or, before anything is, what the field in {@code otherwise} holds. */
  public record TypedText(boolean masked, Optional<FieldReference> otherwise) implements Part {}

  /** What a field holds (or would hold, while it is being scrolled or switched). */
  public record FieldText(FieldReference field, int width) implements Part {}

  /** The number of the current record of a kind, with leading zeros to {@code width}. */
  public record RecordNumber(String record, int width) implements Part {}

  /** The choice, item, option or word under the cursor. */
  public record UnderCursor() implements Part {}

  /** The number of the record that knows the transmitter just heard. */
  public record OtherRecord() implements Part {}

  /** The number of the current location, with leading zeros to {@code width}. */
  public record LocationNumber(int width) implements Part {}
}
