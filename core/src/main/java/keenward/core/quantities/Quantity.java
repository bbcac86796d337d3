package keenward.core.quantities;

/**
 * A physical quantity that remembers how it was written on site. Two quantities are equal when
 * value and writing are equal; compare the values where only the amount matters.
 */
public sealed interface Quantity
    permits Angle,
        Capacity,
        Conductor,
        Current,
        Frequency,
        Length,
        Level,
        Period,
        Resistance,
        SoundLevel,
        Span,
        Temperature,
        Voltage {

  /** The text as the technician wrote it, such as {@code 120 ft}. */
  String written();
}
