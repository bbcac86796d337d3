package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.math.BigDecimal;
import java.util.List;
import keenward.core.plan.Backdrop;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.PicturePoint;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** A picture to trace the rooms of a floor over. */
final class BackdropSection {

  /** No file outside the plan's folder: a plan from somebody else must not show what it likes. */
  static final Field<String> PICTURE =
      required(
          "picture",
          Shapes.pattern(
              "a .png, .jpg or .pdf file in the folder of the plan or below it",
              "^([^./\\\\:][^/\\\\:]*/){0,8}[^./\\\\:][^/\\\\:]*[.]([Pp][Nn][Gg]|[Jj][Pp][Ee]?[Gg]|[Pp][Dd][Ff])$",
              text -> text),
          "ground-floor.png",
          "The picture: a `.png`, `.jpg` or `.pdf` file, by its path from the folder of the plan.");

  static final Field<Integer> PAGE =
      optional("page", Shapes.wholeNumber(1, 9999), "2", "Page of a PDF.").usual("1");
  static final Field<List<List<BigDecimal>>> POINTS =
      optional(
          "points",
          Shapes.list(Shapes.list(Shapes.decimal("0", "1000000")).of(2, 2)).of(2, 2),
          "[[120, 840], [1320, 840]]",
          "Two places of the picture whose distance in the building was measured, the farther apart the better: to the"
              + " right and down from its upper left corner, in pixels, or points of 1/72 inch on a page of a PDF.");
  static final Field<Fact<Length>> DISTANCE =
      optional("distance", Common.length(), "12 m", "How far apart these two are in the building.");
  static final Field<Fact<List<BigDecimal>>> AT =
      optional(
              "at",
              Common.coordinates().orUnknown(),
              "[0, 0]",
              "Where the first of them lies on the floor, in the floor's unit.")
          .usual("`[0, 0]`");
  static final Field<Fact<Angle>> BEARING =
      optional(
              "bearing",
              Shapes.quantity(Angle::parse, Angle.units()).orUnknown(),
              "90 deg",
              "Direction from the first to the second on the floor, clockwise from north; it turns a crooked scan straight.")
          .usual("as in the picture");

  static final MapShape SHAPE =
      MapShape.of(
              "backdrop",
              "A picture of the floor to trace rooms over; `trace` and the workbench show it. Name the picture first,"
                  + " read two places off it, then give their distance.",
              PICTURE,
              PAGE,
              POINTS,
              DISTANCE,
              AT,
              BEARING)
          .example(
              """
              floors:
                Ground:
                  backdrop: { picture: ground-floor.png, points: [[120, 840], [1320, 840]], distance: 12 m }
                  rooms:
                    Shop: { use: shop }
              """);

  private BackdropSection() {}

  static Backdrop bind(Fields fields, DrawingUnit unit) {
    return new Backdrop(
        fields.get(PICTURE),
        fields.find(PAGE).orElse(1),
        fields.list(POINTS).stream()
            .map(point -> new PicturePoint(point.get(0).doubleValue(), point.get(1).doubleValue()))
            .toList(),
        fields.fact(DISTANCE),
        fields.fact(AT).map(place -> Common.point(place, unit)),
        fields.fact(BEARING));
  }
}
