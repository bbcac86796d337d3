package keenward.core.reporting;

import java.util.List;
import java.util.Optional;

/**
 * A DC-09 frame. Texts hold one character a byte (U+0000 to U+00FF), so that what was received can
 * be sent on unchanged. The content of an encrypted frame stays closed: its key is not known here.
 *
 * @param token what it carries, such as {@code ADM-CID}, {@code NULL} or {@code ACK}
 * @param sequence 0 to 9999; 0 only in NAK
 * @param receiver one to six hexadecimal digits after R, when given
 * @param prefix one to six hexadecimal digits after L; "0" when unused
 * @param account three to sixteen hexadecimal digits after #; empty only in NAK
 * @param content what stands in the brackets
 */
public record Frame(
    String token,
    int sequence,
    Optional<String> receiver,
    String prefix,
    String account,
    Content content) {

  /** Token of a DC-05 event. */
  public static final String EVENT = "ADM-CID";

  /** Token of a link test. */
  public static final String LINK_TEST = "NULL";

  /** Token of an acknowledgement. */
  public static final String ACKNOWLEDGED = "ACK";

  /** Token of a refusal, which tells the receiver's present time. */
  public static final String REFUSED = "NAK";

  /** Token of the answer to a sound frame that the receiver cannot handle. */
  public static final String UNABLE = "DUH";

  private static final int HIGHEST_SEQUENCE = 9999;

  /** What stands in a frame's brackets and after them. */
  public sealed interface Content {}

  /**
   * Content in clear.
   *
   * @param data between the first brackets; empty in a link test and in answers
   * @param blocks contents of the optional brackets after the data, identifier letter first
   * @param time time stamp, when given
   */
  public record Plain(String data, List<String> blocks, Optional<FrameTime> time)
      implements Content {
    /** Copies the list. */
    public Plain {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Content that needs a key; the time stamp is inside.
   *
   * @param hexadecimal two digits a byte, as received
   */
  public record Encrypted(String hexadecimal) implements Content {}

  /**
   * Checks the header.
   *
   * @throws IllegalArgumentException when a field does not fit DC-09
   */
  public Frame {
    if (sequence < 0 || sequence > HIGHEST_SEQUENCE) {
      throw new IllegalArgumentException("sequence " + sequence + ": expected 0 to 9999");
    }
    receiver.ifPresent(digits -> requireHexadecimal("receiver", digits, 1, 6));
    requireHexadecimal("prefix", prefix, 1, 6);
    if (!(token.equals(REFUSED) && account.isEmpty())) {
      requireHexadecimal("account", account, 3, 16);
    }
  }

  /** The event report of a plain DC-05 frame, as {@code #account|QXYZ GG CCC} holds it. */
  public Decoded<EventReport> event() {
    if (!token.equals(EVENT)) {
      return Decoded.refused(0, "a frame of type " + token, "type " + EVENT);
    }
    return switch (content) {
      case Encrypted closed -> Decoded.refused(0, "an encrypted event", "a plain one");
      case Plain plain -> {
        int bar = plain.data().indexOf('|');
        if (bar < 0) {
          yield Decoded.refused(0, "event data without '|'", "#account|QXYZ GG CCC");
        }
        yield switch (EventReport.parse(plain.data().substring(bar + 1))) {
          case Decoded.Refused<EventReport> refused -> refused.shifted(bar + 1);
          case Decoded.Value<EventReport> value -> value;
        };
      }
    };
  }

  /** The account named in the data, which may differ from the frame's own. */
  public Optional<String> eventAccount() {
    if (content instanceof Plain plain && plain.data().startsWith("#")) {
      int bar = plain.data().indexOf('|');
      return bar < 0 ? Optional.empty() : Optional.of(plain.data().substring(1, bar));
    }
    return Optional.empty();
  }

  /** A frame that reports an event. */
  public static Frame ofEvent(
      int sequence, String account, EventReport report, Optional<FrameTime> time) {
    return new Frame(
        EVENT,
        sequence,
        Optional.empty(),
        "0",
        account,
        new Plain("#" + account + "|" + report.text(), List.of(), time));
  }

  /** A link test. */
  public static Frame ofLinkTest(int sequence, String account) {
    return new Frame(
        LINK_TEST,
        sequence,
        Optional.empty(),
        "0",
        account,
        new Plain("", List.of(), Optional.empty()));
  }

  /** The plain acknowledgement of a frame: same sequence number, receiver, prefix and account. */
  public Frame acknowledgement(Optional<FrameTime> time) {
    return new Frame(
        ACKNOWLEDGED, sequence, receiver, prefix, account, new Plain("", List.of(), time));
  }

  /** The refusal of a frame whose time stamp is outside the window. */
  public static Frame refusal(FrameTime now) {
    return new Frame(
        REFUSED, 0, Optional.of("0"), "0", "", new Plain("", List.of(), Optional.of(now)));
  }

  /** The sequence number after this one: after 9999 comes 1. */
  public static int next(int sequence) {
    return sequence >= HIGHEST_SEQUENCE ? 1 : sequence + 1;
  }

  private static void requireHexadecimal(String name, String digits, int least, int most) {
    boolean fits = digits.length() >= least && digits.length() <= most;
    for (int index = 0; fits && index < digits.length(); index++) {
      fits = Digits.isHexadecimal(digits.charAt(index));
    }
    if (!fits) {
      throw new IllegalArgumentException(
          name + " '" + digits + "': expected " + least + " to " + most + " hexadecimal digits");
    }
  }
}
