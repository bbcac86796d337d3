package keenward.core.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a regime says about one setting.
 *
 * @param standard the regime
 * @param setting the setting
 * @param editions in words, which editions
 * @param fromYear first year of edition that it holds for; 0 for all
 * @param untilYear last year of edition that it holds for; 9999 for all
 * @param usual its default; null when it gives none
 * @param least smallest value allowed; null when it sets no limit
 * @param most largest value allowed; null when it sets no limit
 * @param zeroAllowed whether 0, meaning off, is allowed as well
 * @param source clause, and whether it was read on a page or is from memory
 */
public record RegimeFigure(
    Standard standard,
    Setting setting,
    String editions,
    int fromYear,
    int untilYear,
    @Nullable Long usual,
    @Nullable Long least,
    @Nullable Long most,
    boolean zeroAllowed,
    String source) {

  private static final String CP_01_2000 = "editions before 2010";
  private static final String CP_01_2010 = "2010 edition onward";

  /** Every figure that the program holds. */
  public static final List<RegimeFigure> ALL =
      List.of(
          cp01(
              Setting.EXIT_TIME,
              60_000L,
              45_000L,
              255_000L,
              "clause 4.2.2.1; 45 s read in a trade article, 60 s and 255 s from memory"),
          cp01(
              Setting.EXIT_RESTART,
              1L,
              null,
              null,
              "clause 4.2.2.3; read in committee minutes of 2008"),
          cp01(Setting.AUTOMATIC_STAY, 1L, null, null, "unvacated premises; from memory"),
          cp01(Setting.ENTRY_DELAY, 30_000L, 30_000L, 240_000L, "entry delay; from memory"),
          edition(
              Setting.ABORT_WINDOW,
              CP_01_2000,
              0,
              2009,
              30_000L,
              15_000L,
              45_000L,
              false,
              "abort window (dialler delay); read in a trade article"),
          edition(
              Setting.ABORT_WINDOW,
              CP_01_2010,
              2010,
              9999,
              30_000L,
              15_000L,
              45_000L,
              true,
              "abort window; 0 allowed since 2010, read in a trade article; default from memory"),
          cp01(Setting.CANCEL_WINDOW, 300_000L, 300_000L, null, "cancel window; from memory"),
          edition(
              Setting.SWINGER_LIMIT,
              CP_01_2000,
              0,
              2009,
              1L,
              1L,
              2L,
              false,
              "swinger shutdown; read in a trade article"),
          edition(
              Setting.SWINGER_LIMIT,
              CP_01_2010,
              2010,
              9999,
              2L,
              1L,
              6L,
              false,
              "swinger shutdown; read in a trade article"),
          en50131(
              Setting.ENTRY_DELAY,
              null,
              45_000L,
              "EN 50131-1:2006+A1:2009, entry time limit; from memory"),
          en50131(
              Setting.SOUNDER_TIME,
              90_000L,
              900_000L,
              "EN 50131-1:2006, sounder duration; from memory; local rules may be shorter"),
          new RegimeFigure(
              Standard.UL1023,
              Setting.ENTRY_DELAY,
              "classic listing text",
              0,
              9999,
              null,
              null,
              45_000L,
              false,
              "UL 1023, longest entry delay; from memory; CP-01 systems differ"),
          new RegimeFigure(
              Standard.UL1023,
              Setting.EXIT_TIME,
              "classic listing text",
              0,
              9999,
              null,
              null,
              60_000L,
              false,
              "UL 1023, longest exit delay; from memory; CP-01 systems differ"));

  private static RegimeFigure cp01(
      Setting setting,
      @Nullable Long usual,
      @Nullable Long least,
      @Nullable Long most,
      String source) {
    return edition(setting, "all editions", 0, 9999, usual, least, most, false, source);
  }

  private static RegimeFigure edition(
      Setting setting,
      String editions,
      int from,
      int until,
      @Nullable Long usual,
      @Nullable Long least,
      @Nullable Long most,
      boolean zeroAllowed,
      String source) {
    return new RegimeFigure(
        Standard.CP_01,
        setting,
        editions,
        from,
        until,
        usual,
        least,
        most,
        zeroAllowed,
        "ANSI/SIA CP-01, " + source);
  }

  private static RegimeFigure en50131(
      Setting setting, @Nullable Long least, @Nullable Long most, String source) {
    return new RegimeFigure(
        Standard.EN50131, setting, "all editions", 0, 9999, null, least, most, false, source);
  }

  /** Whether a value is allowed by this figure. */
  public boolean allows(long value) {
    return (zeroAllowed && value == 0)
        || ((least == null || value >= least) && (most == null || value <= most));
  }

  /** The allowed values in words, such as {@code 45 s to 255 s}; empty when it sets no limit. */
  public String rangeWords() {
    String off = zeroAllowed ? "0 (off) or " : "";
    if (least != null && most != null) {
      return off + setting.words(least) + " to " + setting.words(most);
    }
    if (most != null) {
      return off + "at most " + setting.words(most);
    }
    return least != null ? off + "at least " + setting.words(least) : "";
  }

  /**
   * Whether it applies to a regime as the plan states it; without an edition every edition's figure
   * applies.
   */
  public boolean appliesTo(Regime regime) {
    if (regime.standard() != standard) {
      return false;
    }
    String edition = regime.edition().orNull();
    if (edition == null || !edition.matches("[0-9]{4}")) {
      return true;
    }
    int year = Integer.parseInt(edition);
    return fromYear <= year && year <= untilYear;
  }
}
