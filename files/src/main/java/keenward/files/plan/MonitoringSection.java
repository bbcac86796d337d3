package keenward.files.plan;

import static keenward.files.shape.Field.optional;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.SignalPath;
import keenward.core.quantities.Span;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** The account at the monitoring centre. */
final class MonitoringSection {

  static final Field<Fact<String>> CENTRE =
      optional("centre", Common.line(), "Northlight Monitoring", "Name of the monitoring centre.");
  static final Field<Fact<String>> PHONE =
      optional(
          "phone",
          Common.name(),
          "01000 555 020",
          "Its telephone number, for putting the site on test.");
  static final Field<Fact<String>> ACCOUNT =
      optional(
          "account",
          Shapes.text(20).orUnknown(),
          "\"0471\"",
          "Account as text: leading zeros stay. A DC-05 account has four digits.");
  static final Field<Fact<SignalFormat>> FORMAT =
      optional("format", Shapes.word(SignalFormat.class).orUnknown(), "dc-05", "Event vocabulary.");
  static final Field<List<SignalPath>> PATHS =
      optional(
          "paths",
          Shapes.list(Shapes.word(SignalPath.class)).withoutRepetition(),
          "[ip, mobile]",
          "Ways to the centre, first choice first.");
  static final Field<Fact<Span>> POLLING =
      optional("polling", Common.span(), "1 h", "Interval at which the path is polled.");
  static final Field<Fact<Span>> TEST_EVERY =
      optional("test every", Common.span(), "24 h", "Interval of the test signal.");
  static final Field<Fact<Boolean>> OPENINGS_AND_CLOSINGS =
      optional(
          "openings and closings",
          Common.yesNo(),
          "yes",
          "Whether arming and disarming are reported.");
  static final Field<Fact<String>> RESPONSE =
      optional(
          "response", Common.line(), "police after call-back", "What the centre does on an alarm.");
  static final Field<Fact<String>> PERMIT =
      optional("permit", Common.line(), "unknown", "Alarm permit reference.");
  static final Field<List<String>> KEYHOLDERS =
      optional(
          "keyholders",
          Shapes.list(Common.person()).withoutRepetition(),
          "[Ines, Tomas]",
          "People of the plan in the order in which they are called.");

  static final MapShape SHAPE =
      MapShape.of(
              "monitoring",
              "The account at the monitoring centre. Codes and passwords never stand in a plan.",
              CENTRE,
              PHONE,
              ACCOUNT,
              FORMAT,
              PATHS,
              POLLING,
              TEST_EVERY,
              OPENINGS_AND_CLOSINGS,
              RESPONSE,
              PERMIT,
              KEYHOLDERS)
          .example(
              """
              monitoring:
                centre: Northlight Monitoring
                phone: 01000 555 020
                account: "0471"
                format: dc-05
                paths: [ip, mobile]
                polling: 1 h
                test every: 24 h
                openings and closings: yes
                response: police after call-back
                permit: unknown
                keyholders: [Ines, Tomas]
              people:
                Ines: { phone: 01000 555 011 }
                Tomas: { phone: 01000 555 012 }
              """);

  private MonitoringSection() {}

  static Monitoring bind(Fields fields) {
    return new Monitoring(
        fields.fact(CENTRE),
        fields.fact(PHONE),
        fields.fact(ACCOUNT),
        fields.fact(FORMAT),
        fields.list(PATHS),
        fields.fact(POLLING),
        fields.fact(TEST_EVERY),
        fields.fact(OPENINGS_AND_CLOSINGS),
        fields.fact(RESPONSE),
        fields.fact(PERMIT),
        fields.list(KEYHOLDERS));
  }
}
