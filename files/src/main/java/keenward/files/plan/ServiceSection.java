package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.time.LocalDate;
import keenward.core.plan.Fact;
import keenward.core.plan.Service;
import keenward.core.plan.UnplacedRow;
import keenward.core.quantities.Period;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** Maintenance, and import rows that did not fit. */
final class ServiceSection {

  static final Field<Fact<LocalDate>> INSTALLED =
      optional(
          "installed", Shapes.date().orUnknown(), "2026-10-02", "Date the system was installed.");
  static final Field<Fact<LocalDate>> LAST_VISIT =
      optional("last visit", Shapes.date().orUnknown(), "2026-10-02", "Date of the last visit.");
  static final Field<Fact<Period>> EVERY =
      optional("every", Common.period(), "12 months", "Interval between visits.");
  static final Field<Fact<String>> BY =
      optional("by", Common.line(), "Harrow & Finch Alarms", "Who does it.");

  static final MapShape SHAPE =
      MapShape.of("service", "Maintenance.", INSTALLED, LAST_VISIT, EVERY, BY)
          .example(
              """
              service:
                installed: 2026-10-02
                last visit: 2026-10-02
                every: 12 months
                by: Harrow & Finch Alarms
              """);

  static final Field<String> ROW_TEXT =
      required("text", Shapes.longText(4000), "\"013;Corridor motion\"", "The row as it came.");
  static final Field<String> ROW_WHY =
      required("why", Shapes.text(200), "zone 13 is there already", "Why it did not fit.");

  static final MapShape UNPLACED =
      MapShape.of(
              "unplaced row",
              "A row of an import that did not fit. Nothing is dropped, and the checks keep mentioning it.",
              ROW_TEXT,
              ROW_WHY)
          .example(
              """
              unplaced:
                - { text: "013;Corridor motion;immediate;A;0412 7739", why: zone 13 is there already }
              """);

  private ServiceSection() {}

  static Service bind(Fields fields) {
    return new Service(
        fields.fact(INSTALLED), fields.fact(LAST_VISIT), fields.fact(EVERY), fields.fact(BY));
  }

  static UnplacedRow unplaced(Fields fields) {
    return new UnplacedRow(fields.get(ROW_TEXT), fields.get(ROW_WHY));
  }
}
