package keenward.core.dialogue.description;

/** A field as a screen refers to it; the record is the one that is current. */
public sealed interface FieldReference {

  /** A field by its full name. */
  record Named(String field) implements FieldReference {}

  /** The field at the numbered location that was gone to. */
  record AtLocation() implements FieldReference {}
}
