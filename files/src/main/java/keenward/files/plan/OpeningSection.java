package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import keenward.core.plan.Fact;
import keenward.core.plan.Hinge;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Swing;
import keenward.core.quantities.Length;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** Doors, windows and the like. */
final class OpeningSection {

  static final Field<OpeningKind> KIND =
      required("kind", Shapes.word(OpeningKind.class), "door", "What it is.");
  static final Field<Fact<Length>> AT =
      optional(
          "at",
          Common.length(),
          "1.2 m",
          "Distance along the wall from its first corner (in the order of the first room's outline) to the nearer jamb.");
  static final Field<Fact<Length>> WIDTH =
      optional("width", Common.length(), "0.9 m", "Clear width.");
  static final Field<Fact<Length>> HEIGHT =
      optional("height", Common.length(), "2 m", "Clear height.");
  static final Field<Fact<Hinge>> HINGE =
      optional(
          "hinge",
          Shapes.word(Hinge.class).orUnknown(),
          "left",
          "Side of the hinge, seen from the first room.");
  static final Field<Fact<Swing>> OPENS =
      optional(
          "opens",
          Shapes.word(Swing.class).orUnknown(),
          "in",
          "Into the first room, or out of it.");
  static final Field<Fact<Material>> MATERIAL =
      optional(
          "material",
          Shapes.word(Material.class).orUnknown(),
          "glass",
          "What leaf or pane is made of.");
  static final Field<Fact<Boolean>> REACHABLE =
      optional(
              "reachable",
              Common.yesNo(),
              "no",
              "Whether it can be reached from outside without a ladder.")
          .usual("yes on the lowest floor");
  static final Field<Fact<String>> EXCLUDED =
      optional(
              "excluded",
              Common.line(),
              "bricked up",
              "Reason, signed off by the owner, for leaving it unprotected.")
          .usual("it is to be protected");
  static final Field<Fact<String>> NOTE =
      optional("note", Common.note(), "over the awning", "Anything else.");

  static final MapShape SHAPE =
      MapShape.of(
          "opening",
          "A door, window or other opening, at a place along a wall.",
          KIND,
          WallPlace.BETWEEN,
          WallPlace.EDGE,
          AT,
          WIDTH,
          HEIGHT,
          HINGE,
          OPENS,
          MATERIAL,
          REACHABLE,
          EXCLUDED,
          NOTE);

  private OpeningSection() {}

  static Opening bind(String name, Fields fields) {
    return new Opening(
        name,
        fields.get(KIND),
        WallPlace.bind(fields),
        fields.fact(AT),
        fields.fact(WIDTH),
        fields.fact(HEIGHT),
        fields.fact(HINGE),
        fields.fact(OPENS),
        fields.fact(MATERIAL),
        fields.fact(REACHABLE),
        fields.fact(EXCLUDED),
        fields.fact(NOTE));
  }
}
