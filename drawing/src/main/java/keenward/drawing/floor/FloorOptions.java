package keenward.drawing.floor;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.walking.SiteWalk;
import keenward.core.radio.RadioMap;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;

/**
 * How a floor is drawn.
 *
 * @param widthPixels the most width it may take; from 860 on the legend may stand beside the plan,
 *     and below 560 a long floor may be turned so that north points to the right
 * @param palette where colours come from
 * @param idPrefix what every element id starts with; set it apart where a page holds several
 *     drawings of one floor
 * @param faces font family; the widths of words are planned for faces no wider than DejaVu Sans
 * @param litZones numbers of zones to light
 * @param litOpenings names of openings to light
 * @param marks flags
 * @param coverage what detectors see, to be tinted, and where nobody looks, to be hatched; empty
 *     for a drawing without it
 * @param walks walks to draw, numbered from 1 in their order
 * @param radio margins of radio to tint, of whatever floors
 */
public record FloorOptions(
    double widthPixels,
    Palette palette,
    String idPrefix,
    String faces,
    Set<Integer> litZones,
    Set<String> litOpenings,
    List<FloorMark> marks,
    Optional<CoverageMap> coverage,
    List<SiteWalk> walks,
    List<RadioMap> radio) {

  private static final double LEAST_WIDTH_PIXELS = 280;

  public FloorOptions {
    litZones = Set.copyOf(litZones);
    litOpenings = Set.copyOf(litOpenings);
    marks = List.copyOf(marks);
    walks = List.copyOf(walks);
    radio = List.copyOf(radio);
    if (!(widthPixels >= LEAST_WIDTH_PIXELS && widthPixels <= 10_000)) {
      throw new IllegalArgumentException("width of a drawing from 280 to 10000 px: " + widthPixels);
    }
  }

  /** For a page on a desk: 960 px, colours of the page. */
  public static FloorOptions desk() {
    return new FloorOptions(
        960,
        Palette.PAGE,
        "",
        Lettering.FACES,
        Set.of(),
        Set.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** For a page on a phone: 360 px, colours of the page. */
  public static FloorOptions phone() {
    return desk().width(360);
  }

  /** For paper: 680 px, which is A4 between margins at 96 px an inch, plain colours. */
  public static FloorOptions paper() {
    return desk().width(680).palette(Palette.PRINT);
  }

  public FloorOptions width(double pixels) {
    return new FloorOptions(
        pixels, palette, idPrefix, faces, litZones, litOpenings, marks, coverage, walks, radio);
  }

  public FloorOptions palette(Palette other) {
    return new FloorOptions(
        widthPixels, other, idPrefix, faces, litZones, litOpenings, marks, coverage, walks, radio);
  }

  public FloorOptions idPrefix(String prefix) {
    return new FloorOptions(
        widthPixels, palette, prefix, faces, litZones, litOpenings, marks, coverage, walks, radio);
  }

  public FloorOptions faces(String family) {
    return new FloorOptions(
        widthPixels,
        palette,
        idPrefix,
        family,
        litZones,
        litOpenings,
        marks,
        coverage,
        walks,
        radio);
  }

  public FloorOptions lit(Set<Integer> zones, Set<String> openings) {
    return new FloorOptions(
        widthPixels, palette, idPrefix, faces, zones, openings, marks, coverage, walks, radio);
  }

  public FloorOptions marks(List<FloorMark> flags) {
    return new FloorOptions(
        widthPixels,
        palette,
        idPrefix,
        faces,
        litZones,
        litOpenings,
        flags,
        coverage,
        walks,
        radio);
  }

  public FloorOptions coverage(CoverageMap map) {
    return new FloorOptions(
        widthPixels,
        palette,
        idPrefix,
        faces,
        litZones,
        litOpenings,
        marks,
        Optional.of(map),
        walks,
        radio);
  }

  public FloorOptions walks(List<SiteWalk> timed) {
    return new FloorOptions(
        widthPixels,
        palette,
        idPrefix,
        faces,
        litZones,
        litOpenings,
        marks,
        coverage,
        timed,
        radio);
  }

  public FloorOptions radio(List<RadioMap> margins) {
    return new FloorOptions(
        widthPixels,
        palette,
        idPrefix,
        faces,
        litZones,
        litOpenings,
        marks,
        coverage,
        walks,
        margins);
  }

  /** The margins over a floor. */
  Optional<RadioMap> radioOf(String floor) {
    return radio.stream().filter(map -> map.floor().name().equals(floor)).findFirst();
  }

  boolean isNarrow() {
    return widthPixels < 560;
  }
}
