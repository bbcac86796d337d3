package keenward.core.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import keenward.core.plan.Worded;
import keenward.core.plan.Zone;

/** Puts things of a plan into the sentences of findings. */
public final class Words {

  private static final int MOST_LISTED = 4;

  private Words() {}

  /** A length in whole millimetres. */
  public static String millimetres(double metres) {
    return Math.round(1000 * metres) + " mm";
  }

  /** A text that begins a sentence. */
  public static String capitalized(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** A zone, such as {@code zone 6 'Passage motion'}. */
  public static String zone(Zone zone) {
    return "zone " + zone.number() + " '" + zone.name() + "'";
  }

  /** A zone at the beginning of a sentence. */
  public static String atStart(Zone zone) {
    return "Zone " + zone.number() + " '" + zone.name() + "'";
  }

  /** Several zones, such as {@code 1 'Shop door' and 2 'Shop motion'}. */
  public static String zones(List<Zone> zones) {
    return list(zones.stream().map(zone -> zone.number() + " '" + zone.name() + "'").toList());
  }

  /** Names in quotation marks, the last joined by {@code and}. */
  public static String names(List<String> names) {
    return list(names.stream().map(name -> "'" + name + "'").toList());
  }

  /** Names in quotation marks; of more than four the first three and how many more. */
  public static String someNames(List<String> names) {
    return list(some(names.stream().map(name -> "'" + name + "'").toList()));
  }

  /** Zones by number and name; of more than four the first three and how many more. */
  public static String someZones(List<Zone> zones) {
    return list(
        some(zones.stream().map(zone -> zone.number() + " '" + zone.name() + "'").toList()));
  }

  private static List<String> some(List<String> texts) {
    return texts.size() <= MOST_LISTED
        ? texts
        : Stream.concat(
                texts.stream().limit(MOST_LISTED - 1),
                Stream.of(texts.size() - MOST_LISTED + 1 + " more"))
            .toList();
  }

  /** The words of enumeration constants, the last joined by {@code and}. */
  public static String words(List<? extends Worded> constants) {
    return list(constants.stream().map(Worded::word).toList());
  }

  /** Texts, the last joined by {@code and}. */
  public static String list(List<String> texts) {
    return joined(texts, " and ");
  }

  private static String joined(List<String> texts, String last) {
    return switch (texts.size()) {
      case 0 -> "none";
      case 1 -> texts.getFirst();
      default -> String.join(", ", texts.subList(0, texts.size() - 1)) + last + texts.getLast();
    };
  }

  /** The words of enumeration constants, the last joined by {@code or}. */
  public static String either(List<? extends Worded> constants) {
    return joined(constants.stream().map(Worded::word).toList(), " or ");
  }

  /** A number to three decimals at most, for print. */
  public static String number(double value) {
    BigDecimal rounded =
        new BigDecimal(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** Seconds, rounded up. */
  public static String wholeSeconds(double seconds) {
    return (long) Math.ceil(seconds) + " s";
  }

  /** A text without blanks of any kind. */
  public static String withoutBlanks(String text) {
    return text.replaceAll("[\\p{Z}\\s]", "");
  }

  /** A number with what it counts, such as {@code 1 resistor} or {@code 2 resistors}. */
  public static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
