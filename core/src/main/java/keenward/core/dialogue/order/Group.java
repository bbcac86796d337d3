package keenward.core.dialogue.order;

import java.util.List;
import java.util.Optional;

/**
 * A part of an order that is best done in one go.
 *
 * @param part what it is about
 * @param record name of the kind of record, or empty
 * @param recordNumber number of the record; 0 where there is none
 * @param instructions in order
 * @param effort what it takes
 * @param stop where a person may stop afterwards; absent after the way in and after the way out
 */
public record Group(
    Part part,
    String record,
    int recordNumber,
    List<Instruction> instructions,
    Effort effort,
    Optional<StoppingPlace> stop) {
  public Group {
    instructions = List.copyOf(instructions);
  }

  /** What a group is about. */
  public enum Part {
    /** Into programming. */
    WAY_IN,
    /** Fields that belong to no record. */
    SETTINGS,
    /** One record, such as zone 5. */
    RECORD,
    /** Several records that can only be done together. */
    RECORDS_TOGETHER,
    /** Out of programming by a documented way. */
    WAY_OUT
  }

  /** A short title, such as {@code zone 5}. */
  public String title() {
    return switch (part) {
      case WAY_IN -> "way in";
      case SETTINGS -> "settings";
      case RECORD -> record + " " + recordNumber;
      case RECORDS_TOGETHER -> record + " " + recordNumber + " and others together";
      case WAY_OUT -> "way out";
    };
  }
}
