package keenward.core.dialogue.description;

import java.util.List;
import java.util.Set;

/**
 * A value that one field of the panel's memory holds. Values are small, immutable and comparable by
 * {@code equals}; which of them a field may hold is said by its {@link FieldType}.
 */
public sealed interface Value {

  /** A whole number as the panel counts it, which may be in steps of some unit. */
  record Whole(int number) implements Value {}

  /** The word of a choice. */
  record Word(String word) implements Value {}

  /** The chosen options of a set: bit n stands for the option at index n of the field's options. */
  record Members(long bits) implements Value {
    /** Whether the option at {@code index} is chosen. */
    public boolean contains(int index) {
      return ((bits >>> index) & 1L) != 0;
    }
  }

  /** Text, digits with their leading zeros, hexadecimal digits, or a serial number. */
  record Text(String text) implements Value {}

  /** Words of the panel's own list, in order. */
  record Words(List<String> words) implements Value {
    public Words {
      words = List.copyOf(words);
    }
  }

  /** A code, by an opaque reference; the digits themselves never reach the core. */
  record Secret(String reference) implements Value {}

  /** The field holds nothing: no transmitter learnt, no code set. */
  record Nothing() implements Value {}

  /** Not known: any value that the field may hold except those in {@code except}. */
  record Unknown(Set<Value> except) implements Value {
    public Unknown {
      except = Set.copyOf(except);
    }
  }

  /** The field holds nothing. */
  static Value nothing() {
    return new Nothing();
  }

  /** Nothing at all is known of the value. */
  static Value unknown() {
    return new Unknown(Set.of());
  }

  /** Whether the value is known. */
  default boolean known() {
    return !(this instanceof Unknown);
  }

  /** Whether this value may be {@code other}: equal, or unknown without excluding it. */
  default boolean mayBe(Value other) {
    return this instanceof Unknown unknown ? !unknown.except().contains(other) : equals(other);
  }

  /** Whether this value is certainly {@code other}. */
  default boolean certainly(Value other) {
    return known() && equals(other);
  }
}
