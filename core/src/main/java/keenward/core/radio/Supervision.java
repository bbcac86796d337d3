package keenward.core.radio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;
import keenward.core.plan.Device;

/**
 * Whether a radio device that is well may be reported missing because its messages got lost.
 *
 * @param device the device
 * @param checkInSeconds from message to message
 * @param windowSeconds how long it may be silent
 * @param othersASecond messages a second of the other devices on its frequency
 * @param marginDecibels margin of each link of its route, as measured or reckoned
 */
public record Supervision(
    Device device,
    double checkInSeconds,
    double windowSeconds,
    double othersASecond,
    List<Double> marginDecibels) {

  /** A message with its repetitions takes so long on the air. */
  static final double MESSAGE_SECONDS = 0.1;

  private static final double SECONDS_A_YEAR = 365.25 * 86_400;

  public Supervision {
    marginDecibels = List.copyOf(marginDecibels);
    if (checkInSeconds <= 0) {
      throw new IllegalArgumentException("a check-in every " + checkInSeconds + " s");
    }
  }

  /** How many messages in a row must be lost before it is reported. */
  public int messages() {
    return (int) Math.min(100_000, Math.floor(windowSeconds / checkInSeconds));
  }

  /** Share of messages that are lost on the way: Rayleigh fading on each link. */
  public double fadedShare() {
    double heard = 1;
    for (double margin : marginDecibels) {
      heard *= Math.exp(-Math.pow(10, -margin / 10));
    }
    return 1 - heard;
  }

  /** Share of messages that meet another: pure ALOHA. */
  public double collidedShare() {
    return 1 - Math.exp(-2 * MESSAGE_SECONDS * othersASecond);
  }

  /** Share of messages that are lost. */
  public double lostShare() {
    return 1 - (1 - fadedShare()) * (1 - collidedShare());
  }

  /** False reports a year: runs of lost messages as long as the window. */
  public double falseReportsAYear() {
    double lost = lostShare();
    return SECONDS_A_YEAR / checkInSeconds * (1 - lost) * Math.pow(lost, messages());
  }

  /** Time on the air. */
  public double airSecondsAnHour() {
    return 3600 * MESSAGE_SECONDS / checkInSeconds;
  }

  /** The sum, line by line. */
  public List<Explained> lines(double megahertz) {
    List<Explained> lines = new ArrayList<>();
    lines.add(
        Explained.known(
            "Check-ins in the supervision time",
            Figures.text(windowSeconds) + " s / " + Figures.text(checkInSeconds) + " s",
            messages(),
            "",
            "the plan"));
    lines.add(
        Explained.known(
            "Messages lost to fading",
            "1 - exp(-10^(-margin / 10)), margin "
                + String.join(
                    " and ",
                    marginDecibels.stream().map(each -> Figures.text(each, "dB") + " dB").toList()),
            1e6 * fadedShare(),
            "in a million",
            "Rayleigh fading, textbook"));
    lines.add(
        Explained.known(
            "Messages that meet another",
            "1 - exp(-2 x "
                + Figures.text(MESSAGE_SECONDS)
                + " s x "
                + Figures.text(othersASecond)
                + " messages/s)",
            1e6 * collidedShare(),
            "in a million",
            "pure ALOHA, common practice; length of a message common practice, no source"));
    lines.add(
        Explained.known(
            "False reports of it missing",
            "31557600 s / " + Figures.text(checkInSeconds) + " s x (1 - lost) x lost^" + messages(),
            falseReportsAYear(),
            "a year",
            "runs of lost messages"));
    lines.add(
        Explained.known(
            "Time on the air",
            "3600 x "
                + Figures.text(MESSAGE_SECONDS)
                + " s / "
                + Figures.text(checkInSeconds)
                + " s",
            airSecondsAnHour(),
            "s an hour",
            limit(megahertz).orElse("")));
    return lines;
  }

  /** What a rule of the band allows, as far as it is known here; local rules decide. */
  private static Optional<String> limit(double megahertz) {
    String europe = "ERC/REC 70-03 allows ";
    if (megahertz >= 868.0 && megahertz <= 868.6) {
      return Optional.of(europe + "1 % without listening first, 36 s an hour; from memory");
    }
    if ((megahertz > 868.6 && megahertz <= 868.7) || (megahertz > 869.3 && megahertz <= 869.4)) {
      return Optional.of(europe + "alarms 1 %, 36 s an hour");
    }
    if (megahertz >= 869.2 && megahertz <= 869.3) {
      return Optional.of(europe + "alarms 0.1 %, 3.6 s an hour");
    }
    if (megahertz >= 869.65 && megahertz <= 869.7) {
      return Optional.of(europe + "alarms 10 %, 360 s an hour");
    }
    if (megahertz >= 433.05 && megahertz <= 434.79) {
      return Optional.of(
          europe + "10 %, 360 s an hour, from memory; 47 CFR 15.231(a)(3) allows 2 s an hour");
    }
    if (megahertz >= 260 && megahertz <= 470) {
      return Optional.of("47 CFR 15.231(a)(3) allows 2 s an hour");
    }
    return Optional.empty();
  }
}
