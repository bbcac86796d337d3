package keenward.files.shape;

/**
 * A named value of a map. Each field is one constant; two fields are equal only when they are the
 * same.
 */
public final class Field<T> {

  private final String name;
  private final Shape<T> shape;
  private final boolean required;
  private final String example;
  private final String meaning;
  private final String usual;

  private Field(
      String name, Shape<T> shape, boolean required, String example, String meaning, String usual) {
    this.name = name;
    this.shape = shape;
    this.required = required;
    this.example = example;
    this.meaning = meaning;
    this.usual = usual;
  }

  /**
   * A field that has to be there.
   *
   * @param example a value as written; may be empty
   * @param meaning one sentence for the reference page
   */
  public static <T> Field<T> required(String name, Shape<T> shape, String example, String meaning) {
    return new Field<>(name, shape, true, example, meaning, "");
  }

  /**
   * A field that may be left out.
   *
   * @param example a value as written; may be empty
   * @param meaning one sentence for the reference page
   */
  public static <T> Field<T> optional(String name, Shape<T> shape, String example, String meaning) {
    return new Field<>(name, shape, false, example, meaning, "");
  }

  /** The same field with what holds when it is left out, for the reference page. */
  public Field<T> usual(String text) {
    return new Field<>(name, shape, required, example, meaning, text);
  }

  /** Its name in the file. */
  public String name() {
    return name;
  }

  /** What its value has to be. */
  public Shape<T> shape() {
    return shape;
  }

  /** Whether it may not be left out. */
  public boolean required() {
    return required;
  }

  /** A value as written; may be empty. */
  public String example() {
    return example;
  }

  /** One sentence for the reference page. */
  public String meaning() {
    return meaning;
  }

  /** What holds when it is left out; may be empty. */
  public String usual() {
    return usual;
  }
}
