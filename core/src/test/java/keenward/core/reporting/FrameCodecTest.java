package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class FrameCodecTest {
  private static final FrameTime TIME = new FrameTime(2026, 3, 4, 10, 20, 30);

  /** reference/dc09_frames.csv: public test data and frames computed with two CRC routines. */
  @Test
  void soundFramesAreReadAndWrittenBackByteForByte() {
    int read = 0;
    for (CSVRecord row : ReferenceRows.of("dc09_frames.csv")) {
      if (row.get("verdict").equals("good")) {
        String text = row.get("frame_without_LF_CR");
        Frame frame = frame(text);
        assertThat(new String(FrameCodec.encode(frame), StandardCharsets.ISO_8859_1))
            .as(row.get("description"))
            .isEqualTo("\n" + text + "\r");
        read++;
      }
    }
    assertThat(read).isEqualTo(30);
  }

  /** Four published lines have a wrong length or CRC and must not pass. */
  @Test
  void unsoundFramesAreRefusedForTheRightReason() {
    int refused = 0;
    for (CSVRecord row : ReferenceRows.of("dc09_frames.csv")) {
      if (!row.get("verdict").equals("good")) {
        String reason = refusal(row.get("frame_without_LF_CR"));
        assertThat(reason)
            .as(row.get("description"))
            .startsWith(row.get("length_ok").equals("False") ? "character 6: length" : "CRC");
        refused++;
      }
    }
    assertThat(refused).isEqualTo(4);
  }

  @Test
  void aFrameHoldsItsEventAndBothAccounts() {
    Frame frame = frame("2EB40027\"ADM-CID\"0001L0#1234[#1234|1131 01 015]");
    assertThat(frame.event())
        .isEqualTo(Decoded.of(new EventReport(Qualifier.NEW_EVENT, 131, 1, 15)));
    assertThat(frame.eventAccount()).contains("1234");
    assertThat(frame)
        .isEqualTo(
            Frame.ofEvent(
                1, "1234", new EventReport(Qualifier.NEW_EVENT, 131, 1, 15), Optional.empty()));
  }

  @Test
  void answersRepeatTheAddress() {
    Frame event = frame("9E82003D\"ADM-CID\"0002R1L0#1234[#1234|3131 01 015]_10:20:30,03-04-2026");
    assertThat(text(event.acknowledgement(Optional.of(TIME))))
        .isEqualTo("AD240028\"ACK\"0002R1L0#1234[]_10:20:30,03-04-2026");
    assertThat(text(Frame.refusal(TIME)))
        .isEqualTo("0C440025\"NAK\"0000R0L0A0[]_10:20:30,03-04-2026");
    assertThat(frame("0C440025\"NAK\"0000R0L0A0[]_10:20:30,03-04-2026"))
        .isEqualTo(Frame.refusal(TIME));
  }

  @Test
  void linkTestIsTheShortestFrame() {
    assertThat(FrameCodec.body(Frame.ofLinkTest(9, "1234"))).isEqualTo("\"NULL\"0009L0#1234[]");
    assertThat(frame("342F0015\"NULL\"0009R0L0#1234[]").receiver()).contains("0");
  }

  @Test
  void afterTheHighestSequenceNumberComesOne() {
    assertThat(Frame.next(1)).isEqualTo(2);
    assertThat(Frame.next(9999)).isEqualTo(1);
  }

  @Test
  void encryptedContentStaysClosed() {
    Frame frame =
        frame(
            "76D80055\"*NULL\"0000R0L0#AAAB[B4BC8B40D0E6D959D6BEA78E88CC0B2155741A3C44FBB96D476A3"
                + "E557CAD64D9");
    assertThat(frame.content()).isInstanceOf(Frame.Encrypted.class);
    assertThat(new Frame("ADM-CID", 1, Optional.empty(), "0", "1234", frame.content()).event())
        .isEqualTo(Decoded.refused(0, "an encrypted event", "a plain one"));
  }

  @Test
  void bodiesOutsideTheGrammarAreRefusedWithTheirPlace() {
    assertThat(read("ADM-CID"))
        .isEqualTo("character 1: 'A'; expected a quote before the frame's type");
    assertThat(read("\"ADM"))
        .isEqualTo("character 5: no quote after the frame's type; expected a quote");
    assertThat(read("\"\"0001")).startsWith("character 2: no type");
    assertThat(read("\"adm\"0001")).startsWith("character 2: 'a'");
    assertThat(read("\"NULL\"00x1")).startsWith("character 9: 'x'; expected four digits");
    assertThat(read("\"NULL\"0001#1234[]")).startsWith("character 11: '#'; expected L");
    assertThat(read("\"NULL\"0001L0#12[]")).startsWith("character 16: '['; expected three to");
    assertThat(read("\"NULL\"0001L0#1234[")).endsWith("expected ]");
    assertThat(read("\"NULL\"0001L0#1234[a[b]")).startsWith("character 20: '['");
    assertThat(read("\"NULL\"0001L0#1234[][m1]")).startsWith("character 21: a block without");
    assertThat(read("\"NULL\"0001L0#1234[]_10:20:30,13-04-2026"))
        .startsWith("character 20: a time that does not exist");
    assertThat(read("\"NULL\"0001L0#1234[]x")).startsWith("character 21: time stamp of 1");
    assertThat(read("\"*NULL\"0001L0#1234[0G]")).contains("'G'");
    assertThat(read("\"*NULL\"0001L0#1234[00]")).contains("']'");
    assertThat(read("\"*NULL\"0001L0#1234[00")).contains("2 digits of encrypted content");
  }

  @Test
  void datesFollowTheCalendar() {
    assertThat(FrameTime.parse("_00:00:00,02-29-2024")).isInstanceOf(Decoded.Value.class);
    assertThat(FrameTime.parse("_00:00:00,02-29-2100")).isInstanceOf(Decoded.Refused.class);
    assertThat(FrameTime.parse("_24:00:00,02-28-2100")).isInstanceOf(Decoded.Refused.class);
    assertThat(FrameTime.parse("_00:00:00 02-28-2100")).isInstanceOf(Decoded.Refused.class);
    assertThatThrownBy(() -> new FrameTime(2026, 4, 31, 0, 0, 0)).hasMessageContaining("no such");
  }

  @Test
  void everyEdgeOfCalendarAndClockIsATime() {
    for (String time :
        List.of("_00:00:00,01-01-0001", "_23:59:59,12-31-9999", "_12:30:30,04-30-2026")) {
      assertThat(FrameTime.parse(time)).as(time).isInstanceOf(Decoded.Value.class);
    }
    for (String time :
        List.of(
            "_00:00:00,01-01-0000",
            "_00:60:00,01-01-2026",
            "_00:00:60,01-01-2026",
            "_00:00:00,00-01-2026",
            "_00:00:00,01-00-2026",
            "_00:00:00,01-32-2026",
            "_00:00:00,02-29-2026")) {
      assertThat(FrameTime.parse(time)).as(time).isInstanceOf(Decoded.Refused.class);
    }
    assertThat(FrameTime.parse("_00:00:00,02-29-2000")).isInstanceOf(Decoded.Value.class);
  }

  @Test
  void theOutsideOfAFrameIsCheckedByteByByte() {
    assertThat(bytesRefusal("\n1234"))
        .isEqualTo("character 6: frame of 5 bytes; expected at least 10 bytes");
    assertThat(bytesRefusal("x342F0015\"NULL\"0009R0L0#1234[]\r"))
        .isEqualTo("character 1: a frame that begins byte 0x78; expected line feed (0x0A)");
    assertThat(bytesRefusal("\n342F0015\"NULL\"0009R0L0#1234[]\n"))
        .isEqualTo("character 31: a frame that ends byte 0x0A; expected carriage return (0x0D)");
    assertThat(bytesRefusal("\n342Z0015\"NULL\"0009R0L0#1234[]\r"))
        .isEqualTo("character 5: byte 0x5A before the body; expected a hexadecimal digit");
    assertThat(bytesRefusal("\n342F1015\"NULL\"0009R0L0#1234[]\r"))
        .isEqualTo("character 6: byte 0x31 before the body; expected 0 before the length");
    assertThat(bytesRefusal("\n342E0015\"NULL\"0009R0L0#1234[]\r"))
        .isEqualTo("character 2: CRC 342E; expected 342F");
  }

  @Test
  void placesOfABadBodyCountTheBytesInFrontOfIt() {
    byte[] bytes = FrameEnvelope.wrap("\"NULL\"00x1");
    assertThat(FrameCodec.decode(bytes))
        .isEqualTo(Decoded.refused(17, "'x'", "four digits of sequence number"));
  }

  @Test
  void anEventThatCannotBeReadTellsItsPlaceInTheData() {
    assertThat(withData("#1234|1131-01 015").event())
        .isEqualTo(Decoded.refused(10, "'-' in an event", "a blank"));
    assertThat(withData("1131 01 015").event())
        .isEqualTo(Decoded.refused(0, "event data without '|'", "#account|QXYZ GG CCC"));
    assertThat(withData("1131 01 015").eventAccount()).isEmpty();
    assertThat(Frame.ofLinkTest(1, "1234").event())
        .isEqualTo(Decoded.refused(0, "a frame of type NULL", "type ADM-CID"));
  }

  @Test
  void theLongestBodyIsFourThousandAndNinetyFiveBytes() {
    byte[] bytes = FrameEnvelope.wrap("x".repeat(4095));
    assertThat(new String(bytes, 5, 4, StandardCharsets.ISO_8859_1)).isEqualTo("0FFF");
    assertThat(FrameEnvelope.unwrap(bytes)).isEqualTo(Decoded.of("x".repeat(4095)));
    assertThatThrownBy(() -> FrameEnvelope.wrap("x".repeat(4096)))
        .hasMessageContaining("at most 4095");
    assertThatThrownBy(() -> FrameEnvelope.wrap("a\u0101"))
        .hasMessage("character 2 of the body does not fit one byte");
    assertThat(FrameEnvelope.unwrap(FrameEnvelope.wrap("\u00ff"))).isEqualTo(Decoded.of("\u00ff"));
  }

  @Test
  void headerFieldsHaveTheirLengths() {
    Frame.Plain empty = new Frame.Plain("", List.of(), Optional.empty());
    assertThat(
            new Frame("NULL", 0, Optional.of("ABCDEF"), "123456", "0123456789ABCDEF", empty)
                .sequence())
        .isZero();
    assertThatThrownBy(() -> new Frame("NULL", 1, Optional.of("1234567"), "0", "1234", empty))
        .hasMessageContaining("receiver '1234567'");
    assertThatThrownBy(() -> new Frame("NULL", 1, Optional.empty(), "", "1234", empty))
        .hasMessageContaining("prefix ''");
    assertThatThrownBy(() -> new Frame("NULL", 1, Optional.empty(), "0", "12X4", empty))
        .hasMessageContaining("account '12X4'");
    assertThatThrownBy(() -> new Frame("NULL", -1, Optional.empty(), "0", "1234", empty))
        .hasMessageContaining("sequence -1");
  }

  @Test
  void contentThatWouldBreakTheFrameIsNotSent() {
    assertThatThrownBy(() -> FrameCodec.encode(withData("a]b"))).hasMessageContaining("bracket");
    assertThatThrownBy(() -> FrameCodec.encode(withData("\r"))).hasMessageContaining("one byte");
    assertThatThrownBy(() -> FrameCodec.encode(withData("x".repeat(5000))))
        .hasMessageContaining("at most 4095");
    assertThatThrownBy(() ->
            new Frame(
                "NULL",
                1,
                Optional.empty(),
                "0",
                "12",
                new Frame.Plain("", List.of(), Optional.empty())))
        .hasMessage("account '12': expected 3 to 16 hexadecimal digits");
    assertThatThrownBy(() -> Frame.ofLinkTest(10_000, "1234")).hasMessageContaining("sequence");
  }

  @Test
  void noBytesWhateverBreakTheReader() {
    long seed = 9L;
    Random random = new Random(seed);
    byte[] sound = FrameCodec.encode(Frame.ofLinkTest(9, "1234"));
    for (int round = 0; round < 5_000; round++) {
      byte[] bytes = sound.clone();
      for (int change = 0; change <= random.nextInt(4); change++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
      }
      byte[] cut = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      assertThat(FrameCodec.decode(cut)).as("seed %d", seed).isNotNull();
      String body = new String(bytes, 9, bytes.length - 9, StandardCharsets.ISO_8859_1);
      assertThat(FrameCodec.read(body)).as("seed %d", seed).isNotNull();
    }
  }

  private static Frame withData(String data) {
    return new Frame(
        "ADM-CID",
        1,
        Optional.empty(),
        "0",
        "1234",
        new Frame.Plain(data, List.of(), Optional.empty()));
  }

  private static String text(Frame frame) {
    return new String(FrameCodec.encode(frame), StandardCharsets.ISO_8859_1).strip();
  }

  private static Frame frame(String text) {
    return switch (FrameCodec.decode(bytes(text))) {
      case Decoded.Value<Frame> value -> value.value();
      case Decoded.Refused<Frame> refused ->
          throw new AssertionError(text + ": " + refused.message());
    };
  }

  private static String refusal(String text) {
    return switch (FrameCodec.decode(bytes(text))) {
      case Decoded.Value<Frame> value -> throw new AssertionError(text);
      case Decoded.Refused<Frame> refused -> refused.message();
    };
  }

  private static String bytesRefusal(String text) {
    return switch (FrameCodec.decode(text.getBytes(StandardCharsets.ISO_8859_1))) {
      case Decoded.Value<Frame> value -> throw new AssertionError(text);
      case Decoded.Refused<Frame> refused -> refused.message();
    };
  }

  private static String read(String body) {
    return switch (FrameCodec.read(body)) {
      case Decoded.Value<Frame> value -> throw new AssertionError(body);
      case Decoded.Refused<Frame> refused -> refused.message();
    };
  }

  private static byte[] bytes(String text) {
    return ("\n" + text + "\r").getBytes(StandardCharsets.ISO_8859_1);
  }
}
