package keenward.core.rehearsal;

/** Something that the system does. Indexes are those of the {@link SystemModel}. */
public sealed interface Output {

  /**
   * A signal leaves for the monitoring centre.
   *
   * @param code DC-05 event code
   * @param qualifier DC-05 qualifier: 1 new event or opening, 3 restore or closing
   * @param partition index of the partition; none for the system as a whole
   * @param zone index of the zone; none when it is not about one
   * @param user index of the user; none when it is not about one
   */
  record Signal(int code, int qualifier, int partition, int zone, int user) implements Output {}

  /**
   * The sounders change.
   *
   * @param tone what they give from now on
   */
  record Sounder(Tone tone) implements Output {}

  /**
   * The strobe changes.
   *
   * @param on whether it flashes from now on
   */
  record Strobe(boolean on) implements Output {}

  /**
   * The keypads of a partition are heard.
   *
   * @param partition index of the partition
   * @param beep what they give
   * @param on false when a lasting tone ends
   */
  record Annunciation(int partition, Beep beep, boolean on) implements Output {}

  /**
   * The keypads of a partition show something.
   *
   * @param partition index of the partition; none means all of them
   * @param notice what
   * @param subject index of what it is about
   * @param tenths the time in it, in tenths of a second
   */
  record Display(int partition, Notice notice, int subject, int tenths) implements Output {}

  /**
   * An order is not carried out.
   *
   * @param keypad index of the keypad that says so; none when it was not stated
   * @param notice why
   * @param subject index of what stands in the way
   */
  record Refused(int keypad, Notice notice, int subject) implements Output {}

  /**
   * The log of the panel gains an entry that no signal carries.
   *
   * @param notice what
   * @param subject index of what it is about
   * @param tenths the time in it, in tenths of a second
   */
  record Log(Notice notice, int subject, int tenths) implements Output {}

  /**
   * A violation has no effect beyond being shown as open; said so that the reason can be told.
   *
   * @param zone index of the zone
   */
  record NoEffect(int zone) implements Output {}
}
