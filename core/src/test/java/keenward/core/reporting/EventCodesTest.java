package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class EventCodesTest {
  /** reference/dc05_event_codes.csv: DC-05 (1999.09) as two public copies agree. */
  @Test
  void holdsEveryPublishedCodeWithGroupAndSubject() {
    var rows = ReferenceRows.of("dc05_event_codes.csv");
    assertThat(EventCodes.list()).hasSize(243).hasSameSizeAs(rows);
    for (CSVRecord row : rows) {
      EventCode code = EventCodes.get(Integer.parseInt(row.get("code")));
      assertThat(code.group()).as(row.get("code")).isEqualTo(row.get("group"));
      assertThat(code.subject().word()).as(row.get("code")).isEqualTo(row.get("ccc_field"));
      assertThat(row.get("meaning")).as(row.get("code")).startsWith(code.meaning());
    }
  }

  @Test
  void qualifiersMeanOpeningAndClosingExactlyWhereTheTableSaysSo() {
    for (CSVRecord row : ReferenceRows.of("dc05_event_codes.csv")) {
      EventCode code = EventCodes.get(Integer.parseInt(row.get("code")));
      boolean opening = row.get("q1_meaning").startsWith("opening");
      assertThat(code.use() == QualifierUse.OPENING).as(row.get("code")).isEqualTo(opening);
      boolean disable = row.get("q1_meaning").startsWith("bypass");
      assertThat(code.use() == QualifierUse.DISABLE).as(row.get("code")).isEqualTo(disable);
    }
  }

  @Test
  void headingsAndSupersededCodesAreMarked() {
    assertThat(EventCodes.get(160).standing()).isEqualTo(Standing.HEADING);
    assertThat(EventCodes.get(404).standing()).isEqualTo(Standing.DECODE_ONLY);
    assertThat(EventCodes.get(651).standing()).isEqualTo(Standing.RESERVED);
    assertThat(EventCodes.get(131).standing()).isEqualTo(Standing.USUAL);
  }

  @Test
  void numbersOutsideTheTableAreNotFound() {
    assertThat(EventCodes.find(-1)).isEmpty();
    assertThat(EventCodes.find(1000)).isEmpty();
    assertThat(EventCodes.find(199)).isEmpty();
    assertThatThrownBy(() -> EventCodes.get(199)).hasMessageContaining("199");
  }
}
