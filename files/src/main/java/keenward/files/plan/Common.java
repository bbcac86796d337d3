package keenward.files.plan;

import java.math.BigDecimal;
import java.util.List;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.Point;
import keenward.core.quantities.Current;
import keenward.core.quantities.Length;
import keenward.core.quantities.Period;
import keenward.core.quantities.Span;
import keenward.core.quantities.Voltage;
import keenward.files.shape.ReferenceShape;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** Shapes that several sections use. */
final class Common {

  static final int HIGHEST_ZONE = 99_999;

  private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");

  private Common() {}

  static Shape<Fact<String>> name() {
    return Shapes.text(60).orUnknown();
  }

  static Shape<Fact<String>> line() {
    return Shapes.text(200).orUnknown();
  }

  static Shape<Fact<String>> note() {
    return Shapes.longText(4000).orUnknown();
  }

  static Shape<Fact<Boolean>> yesNo() {
    return Shapes.yesNo().orUnknown();
  }

  static Shape<Fact<Span>> span() {
    return Shapes.quantity(Span::parse, Span.units()).orUnknown();
  }

  static Shape<Fact<Length>> length() {
    return Shapes.quantity(Length::parse, Length.units()).orUnknown();
  }

  static Shape<Fact<Current>> current() {
    return Shapes.quantity(Current::parse, Current.units()).orUnknown();
  }

  static Shape<Fact<Voltage>> voltage() {
    return Shapes.quantity(Voltage::parse, Voltage.units()).orUnknown();
  }

  static Shape<Fact<Period>> period() {
    return Shapes.quantity(Period::parse, Period.units()).orUnknown();
  }

  static Shape<List<BigDecimal>> coordinates() {
    return Shapes.list(Shapes.decimal("-100000", "100000")).of(2, 2);
  }

  static Shape<List<List<BigDecimal>>> outline() {
    return Shapes.list(coordinates()).of(3, 500);
  }

  static ReferenceShape<String> room() {
    return Shapes.reference("a room", "/floors/*/rooms/*");
  }

  static ReferenceShape<String> opening() {
    return Shapes.reference("an opening", "/floors/*/openings/*");
  }

  static ReferenceShape<String> device() {
    return Shapes.reference("a device", "/devices/*");
  }

  static ReferenceShape<String> supply() {
    return Shapes.reference("a supply", "/supplies/*");
  }

  static ReferenceShape<String> person() {
    return Shapes.reference("a person", "/people/*");
  }

  static ReferenceShape<String> partition() {
    return Shapes.reference("a partition", "/partitions/*");
  }

  static ReferenceShape<Integer> zone() {
    return Shapes.numberReference("a zone", HIGHEST_ZONE, "/zones/*");
  }

  /** Plain coordinates as a place in metres. */
  static Point point(List<BigDecimal> coordinates, DrawingUnit unit) {
    return new Point(metres(coordinates.get(0), unit), metres(coordinates.get(1), unit));
  }

  static List<Point> points(List<List<BigDecimal>> outline, DrawingUnit unit) {
    return outline.stream().map(corner -> point(corner, unit)).toList();
  }

  private static double metres(BigDecimal coordinate, DrawingUnit unit) {
    return switch (unit) {
      case METRES -> coordinate.doubleValue();
      case FEET -> coordinate.multiply(METRES_PER_FOOT).doubleValue();
    };
  }
}
