package keenward.core.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Published figures kept beside the tests; each file has a column that says where a row is from.
 */
public final class ReferenceRows {
  private ReferenceRows() {}

  /** Rows of {@code reference/name}. */
  public static List<CSVRecord> of(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream =
            Objects.requireNonNull(
                ReferenceRows.class.getResourceAsStream("/reference/" + name), name);
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(stream, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
