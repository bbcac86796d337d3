package keenward.usecases.trace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Backdrop;
import keenward.core.plan.Floor;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.drawing.trace.TraceDrawing;
import keenward.drawing.trace.TracePicture;
import keenward.files.Problem;
import keenward.files.picture.Picture;
import keenward.files.picture.PictureReader;
import keenward.files.picture.PictureReading;
import keenward.files.plan.PlanPositions;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;
import keenward.usecases.site.KnownNames;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * A floor and the picture that its rooms are traced over.
 *
 * @param floor the floor
 * @param isMeasured whether the scale of the picture is known
 * @param svg the picture with a grid, and with the rooms where it is measured
 */
public record TracedFloor(Floor floor, boolean isMeasured, String svg) {

  private static final int MOST_BYTES = 40 * 1024 * 1024;

  /** The floors of a plan that have a picture, in its order. */
  public static List<String> floors(SitePlan plan) {
    return plan.floors().stream()
        .filter(floor -> floor.backdrop().isGiven())
        .map(Floor::name)
        .toList();
  }

  /**
   * The floor with this name.
   *
   * @param name name of the floor; null for the only one that has a picture
   * @throws BadInput when there is none, or its picture cannot be used
   */
  public static TracedFloor of(SiteFile site, @Nullable String name) throws BadInput {
    SitePlan plan = site.plan();
    List<String> floors = floors(plan);
    if (floors.isEmpty()) {
      throw fault(
          site,
          PlanPath.of("floors"),
          "no floor has a picture to trace",
          "add `backdrop: { picture: ground-floor.png }` to a floor");
    }
    if (name == null && floors.size() > 1) {
      throw new BadInput(
          "--floor",
          "several floors have a picture",
          String.join(", ", floors),
          "name one of them");
    }
    String wanted = name == null ? floors.getFirst() : name;
    KnownNames.check("--floor", "floor with a picture called", wanted, floors);
    Floor floor =
        plan.floors().stream().filter(each -> each.name().equals(wanted)).findFirst().orElseThrow();
    Backdrop backdrop = floor.backdrop().find().orElseThrow();
    Picture picture = picture(site, floor, backdrop);
    checkPoints(site, floor, backdrop, picture);
    boolean isMeasured = backdrop.points().size() == 2 && backdrop.distance().isGiven();
    String unit = backdrop.picture().matches("(?i).*[.]pdf") ? "pt" : "px";
    return new TracedFloor(
        floor,
        isMeasured,
        TraceDrawing.svg(
            floor, new TracePicture(picture.dataUri(), picture.width(), picture.height(), unit)));
  }

  private static Picture picture(SiteFile site, Floor floor, Backdrop backdrop) throws BadInput {
    Path folder =
        Optional.ofNullable(site.path().toAbsolutePath().getParent()).orElse(Path.of("."));
    Path file = folder.resolve(backdrop.picture());
    try {
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        throw fault(
            site,
            place(floor, "picture"),
            "'" + backdrop.picture() + "' leads out of the folder of the plan",
            "copy the picture beside the plan");
      }
    } catch (IOException missing) {
      throw fault(
          site,
          place(floor, "picture"),
          "there is no file '" + backdrop.picture() + "' that can be read",
          "put the picture into the folder of the plan, " + folder);
    }
    byte[] bytes = InputBytes.read(file, "a picture", MOST_BYTES);
    return switch (PictureReader.read(file.toString(), bytes, backdrop.page())) {
      case PictureReading.Read(Picture read) -> read;
      case PictureReading.Refused(Problem problem) -> throw new BadInput(List.of(problem));
    };
  }

  private static void checkPoints(SiteFile site, Floor floor, Backdrop backdrop, Picture picture)
      throws BadInput {
    boolean isOff =
        backdrop.points().stream()
            .anyMatch(point -> point.right() > picture.width() || point.down() > picture.height());
    if (isOff) {
      throw fault(
          site,
          place(floor, "points"),
          "a point lies off the picture, which is "
              + Math.round(picture.width())
              + " wide and "
              + Math.round(picture.height())
              + " high",
          "read both off `trace`");
    }
  }

  private static PlanPath place(Floor floor, String field) {
    return PlanPath.of("floors", floor.name(), "backdrop", field);
  }

  private static BadInput fault(SiteFile site, PlanPath path, String what, String remedy) {
    PlanPositions.Position at = site.positions().of(path);
    return new BadInput(List.of(new Problem(at.file(), at.line(), at.column(), what, "", remedy)));
  }
}
