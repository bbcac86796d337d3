package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class EventMessageTest {
  /** reference/dc05_checksum_examples.csv, first row published, the others computed. */
  @Test
  void examplesAreReadAndWrittenBack() {
    for (CSVRecord row : ReferenceRows.of("dc05_checksum_examples.csv")) {
      String text = row.get("message");
      EventMessage message = read(text);
      assertThat(message.text()).isEqualTo(text);
      assertThat(message.digits()).isEqualTo(row.get("digits"));
      assertThat(read(row.get("digits"))).isEqualTo(message);
    }
  }

  @Test
  void fieldsAreWhatTheLayoutSays() {
    EventMessage message = read("1234 18 1131 01 015 8");
    assertThat(message)
        .isEqualTo(
            new EventMessage(
                new Account("1234"), 18, new EventReport(Qualifier.NEW_EVENT, 131, 1, 15)));
    assertThat(message.report().description())
        .isEqualTo("perimeter zone, new event, partition 1, zone 15");
    assertThat(read("1234 18 3401 01 002 5").report().description())
        .isEqualTo("disarm/arm by a user, closing (arming), partition 1, user 2");
  }

  @Test
  void refusalsSayWhereAndWhatWasExpected() {
    assertThat(refusal("1234 18 1131 01 015 7"))
        .isEqualTo("character 21: check digit 7; expected check digit 8");
    assertThat(refusal("1234 18 1131 01 015"))
        .isEqualTo("character 20: message of 15 digits; expected 16 digits");
    assertThat(refusal("1234 18 1131 01 015 88"))
        .isEqualTo("character 22: a seventeenth digit; expected 16 digits");
    assertThat(refusal("12A4 18 1131 01 015 8"))
        .isEqualTo("character 3: 'A' in a message; expected 0 to 9 or B to F");
    assertThat(refusal("1234 18 1B31 01 015 8"))
        .isEqualTo("character 10: 'B' outside the account; expected a digit 0 to 9");
    assertThat(refusal(checked("123417113101015")))
        .isEqualTo("character 5: message type 17; expected 18 or 98");
    assertThat(refusal(checked("123418213101015")))
        .isEqualTo(
            "character 7: qualifier 2; expected 1 (new event), 3 (restore) or 6 (still present)");
  }

  @Test
  void numbersThatDoNotFitTheirDigitsAreRefused() {
    assertThatThrownBy(() -> new EventReport(Qualifier.RESTORE, 130, 100, 1))
        .hasMessage("partition 100: expected 0 to 99");
    assertThatThrownBy(() -> new EventReport(Qualifier.RESTORE, 130, 1, 1000))
        .hasMessage("zone or user 1000: expected 0 to 999");
    assertThatThrownBy(() -> new EventReport(Qualifier.RESTORE, -1, 1, 1))
        .hasMessage("event code -1: expected 0 to 999");
    assertThatThrownBy(() ->
            new EventMessage(
                new Account("1234"), 19, new EventReport(Qualifier.RESTORE, 130, 1, 1)))
        .hasMessage("message type 19: expected 18 or 98");
  }

  @Test
  void accountsHaveFourDigitsAndNoA() {
    assertThat(Account.parse("BC0F")).isEqualTo(Decoded.of(new Account("BC0F")));
    assertThatThrownBy(() -> new Account("12A4"))
        .hasMessage("character 3: 'A' in an account; expected 0 to 9 or B to F (DC-05 sends no A)");
    assertThatThrownBy(() -> new Account("123"))
        .hasMessage("character 4: account of 3 digits; expected 4 digits, as in 1234");
    assertThat(Account.parse("12345")).isInstanceOf(Decoded.Refused.class);
  }

  @Test
  void anyReportSurvivesWritingAndReading() {
    List<Qualifier> qualifiers = List.of(Qualifier.values());
    long seed = 20260301L;
    Random random = new Random(seed);
    for (int round = 0; round < 2_000; round++) {
      EventReport report =
          new EventReport(
              qualifiers.get(random.nextInt(3)),
              random.nextInt(1000),
              random.nextInt(100),
              random.nextInt(1000));
      EventMessage message = new EventMessage(new Account("90BF"), 98, report);
      assertThat(read(message.text())).as("seed %d", seed).isEqualTo(message);
      assertThat(EventReport.parse(report.text()))
          .as("seed %d", seed)
          .isEqualTo(Decoded.of(report));
    }
  }

  @Test
  void eventTextOutsideItsShapeIsRefused() {
    assertThat(EventReport.parse("1131 01 01"))
        .isEqualTo(
            Decoded.refused(10, "event of 10 characters", "11 characters, as in 1131 01 015"));
    assertThat(EventReport.parse("1131-01 015"))
        .isEqualTo(Decoded.refused(4, "'-' in an event", "a blank"));
    assertThat(EventReport.parse("1131 0x 015"))
        .isEqualTo(Decoded.refused(6, "'x' in an event", "a digit 0 to 9"));
  }

  private static String checked(String digits) {
    return digits + CheckDigit.of(digits);
  }

  private static EventMessage read(String text) {
    return switch (EventMessage.parse(text)) {
      case Decoded.Value<EventMessage> value -> value.value();
      case Decoded.Refused<EventMessage> refused -> throw new AssertionError(refused.message());
    };
  }

  private static String refusal(String text) {
    return switch (EventMessage.parse(text)) {
      case Decoded.Value<EventMessage> value -> throw new AssertionError(value.value().text());
      case Decoded.Refused<EventMessage> refused -> refused.message();
    };
  }
}
