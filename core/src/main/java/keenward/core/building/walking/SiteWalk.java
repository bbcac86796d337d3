package keenward.core.building.walking;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Settings;

/**
 * A walk worth timing.
 *
 * @param kind what for
 * @param who whose habit it is, and which; empty for a walk that anybody may take
 * @param time how long it takes
 * @param delay the delay that has to last; empty when none is set, or none runs
 * @param seenBy which burglary zones see the walker, in order
 */
public record SiteWalk(
    Kind kind,
    Optional<Walk.Habitual> who,
    WalkTime time,
    Optional<Settings.Resolved> delay,
    List<Sightings.Sighting> seenBy) {

  /** What a walk is for. */
  public enum Kind {
    /** From an entry door to the keypad. */
    ENTRY("entry"),
    /** From the keypad out of a door. */
    EXIT("exit"),
    /** From a bedroom to the nearest keypad. */
    NIGHT("night"),
    /** Between two places that somebody asked for. */
    ASKED("asked");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As written. */
    public String word() {
      return word;
    }
  }

  public SiteWalk {
    seenBy = List.copyOf(seenBy);
  }

  /** What the walk is, in a few words. */
  public String title() {
    return who.map(each -> each.person().name() + ": " + each.habit().name())
        .orElse(
            switch (kind) {
              case ENTRY -> "in by " + from();
              case EXIT -> "out by " + to();
              case NIGHT -> "at night from " + from();
              case ASKED -> "from " + from();
            });
  }

  /** Where it begins. */
  public String from() {
    return time.route().from().name();
  }

  /** Where it ends. */
  public String to() {
    return time.route().to().name();
  }

  /** Whole seconds, rounded up, that so many of 100 such people need at most. */
  public int wholeSeconds(Gait.Share share) {
    return (int) Math.ceil(time.seconds(share));
  }

  /** Whether the delay is shorter than what nearly all such people need. */
  public boolean isShort() {
    return delay
        .filter(each -> each.value() < 1000 * time.seconds(Gait.Share.NEARLY_ALL))
        .isPresent();
  }
}
