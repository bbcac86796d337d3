package keenward.core.dialogue.order;

/**
 * What something takes, in the longest case.
 *
 * @param keys keys pressed; a code counts as one
 * @param others waits on purpose, transmitters made to send, and power switched
 * @param panelTenths time that the panel needs
 * @param personTenths time that a person is likely to need, the panel's time included: at least 1.2
 *     s a key and 1.35 s to read a step (Card, Moran and Newell's operators K for somebody
 *     unfamiliar with the keys, and M)
 */
public record Effort(int keys, int others, int panelTenths, int personTenths) {
  /** Nothing. */
  public static final Effort NONE = new Effort(0, 0, 0, 0);

  /** Both, one after the other. */
  public Effort plus(Effort other) {
    return new Effort(
        keys + other.keys,
        others + other.others,
        panelTenths + other.panelTenths,
        personTenths + other.personTenths);
  }

  /** The larger of both, figure by figure. */
  public Effort orAtMost(Effort other) {
    return new Effort(
        Math.max(keys, other.keys),
        Math.max(others, other.others),
        Math.max(panelTenths, other.panelTenths),
        Math.max(personTenths, other.personTenths));
  }
}
