package keenward.core.dialogue.description;

import java.util.List;

/** What a field of the panel's memory may hold, and how it is written as digits where it is. */
public sealed interface FieldType {

  /**
   * A whole number.
   *
   * @param least smallest number, as the panel counts
   * @param most largest number
   * @param step distance between neighbouring numbers, counted from {@code least}
   * @param unit what one counts: {@code s}, {@code min}, or empty for a bare number
   * @param scale how many of {@code unit} one step of the number stands for (10 when the panel
   *     counts in tens of seconds)
   * @param width digits shown, with leading zeros; 0 for as many as needed
   * @param specials numbers that are typed or shown in another way
   */
  record WholeNumber(
      int least, int most, int step, String unit, int scale, int width, List<Special> specials)
      implements FieldType {
    public WholeNumber {
      specials = List.copyOf(specials);
      if (least > most || step < 1 || scale < 1 || width < 0) {
        throw new IllegalArgumentException("range " + least + ".." + most + " step " + step);
      }
    }
  }

  /**
   * A number with a way of its own, such as {@code 00} typed for "never".
   *
   * @param typed digits that are typed for it
   * @param number number that is held
   * @param shown text that the display shows for it
   */
  record Special(String typed, int number, String shown) {}

  /** One of several words. */
  record Choice(List<Option> options) implements FieldType {
    public Choice {
      options = List.copyOf(options);
    }
  }

  /** Any of several options at once; at most 64. */
  record OptionSet(List<Option> options, Written written) implements FieldType {
    public OptionSet {
      options = List.copyOf(options);
      if (options.size() > 64) {
        throw new IllegalArgumentException("more than 64 options");
      }
    }
  }

  /**
   * An option of a choice or a set.
   *
   * @param word the option's name in the description, unique in its field
   * @param code what is typed for it where it is typed, unique in its field
   * @param shown what the display shows for it
   */
  record Option(String word, String code, String shown) {}

  /** How a set is written when it is typed as a number. */
  enum Written {
    /** The codes of the chosen options one after another, each of one character. */
    LIST,
    /** The sum of the chosen options' codes, which are powers of two. */
    SUM
  }

  /** Digits that keep their leading zeros. */
  record Digits(int least, int most, boolean hexadecimal) implements FieldType {
    public Digits {
      if (least < 0 || most < 1 || least > most) {
        throw new IllegalArgumentException("digits " + least + ".." + most);
      }
    }
  }

  /** Text of at most {@code length} characters out of {@code letters}. */
  record FreeText(int length, String letters) implements FieldType {
    public FreeText {
      if (length < 1) {
        throw new IllegalArgumentException("text of length " + length);
      }
    }
  }

  /** At most {@code most} words of a fixed list; a word's number is its place in it, from 1. */
  record WordSequence(int most, List<String> words) implements FieldType {
    public WordSequence {
      words = List.copyOf(words);
    }
  }

  /** The serial number of a transmitter. */
  record Serial(int least, int most, boolean hexadecimal) implements FieldType {}

  /** A code of {@code least} to {@code most} digits, held by reference. */
  record Code(int least, int most) implements FieldType {}
}
