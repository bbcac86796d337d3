package keenward.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.progress.Progress;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.job.SiteJob;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;

/**
 * The sites on the bench. A site is computed again when its file or the day has changed, once for
 * all who wait.
 */
final class Bench {

  /**
   * A site as it stands now.
   *
   * @param name its short name in addresses
   * @param path its file
   * @param job everything computed from it; null when the file has faults
   * @param problems the faults of the file
   */
  record Standing(String name, Path path, @Nullable SiteJob job, List<String> problems) {

    /** The job, when the file is sound. */
    Optional<SiteJob> find() {
      return Optional.ofNullable(job);
    }
  }

  private record Stamp(long modifiedMilliseconds, long size, LocalDate day) {}

  /**
   * One site; its monitor makes requests for it wait for each other, not for those of other sites.
   */
  private static final class Place {
    private final String name;
    private final Path path;
    private @Nullable Stamp stamp;
    private @Nullable Standing standing;

    Place(String name, Path path) {
      this.name = name;
      this.path = path;
    }
  }

  private final Keenward keenward;
  private final Clock clock;
  private final Map<String, Place> places = new LinkedHashMap<>();

  Bench(List<Path> files, Keenward keenward, Clock clock) {
    this.keenward = keenward;
    this.clock = clock;
    for (Path file : files) {
      String name = uniqueName(file);
      places.put(name, new Place(name, file));
    }
  }

  /** Every site, in the order given. */
  List<Standing> all() {
    List<Standing> all = new ArrayList<>();
    places.values().forEach(place -> all.add(standing(place)));
    return all;
  }

  /** The site with this short name. */
  Optional<Standing> find(String name) {
    return Optional.ofNullable(places.get(name)).map(this::standing);
  }

  private Standing standing(Place place) {
    synchronized (place) {
      Stamp stamp = stamp(place.path);
      Standing known = place.standing;
      if (known != null && stamp != null && stamp.equals(place.stamp)) {
        return known;
      }
      Standing fresh = compute(place);
      place.stamp = stamp;
      place.standing = fresh;
      return fresh;
    }
  }

  private Standing compute(Place place) {
    try {
      SiteJob job =
          keenward.job(
              SiteFiles.load(place.path), JobOptions.on(LocalDate.now(clock)), Progress.SILENT);
      return new Standing(place.name, place.path, job, List.of());
    } catch (BadInput bad) {
      return new Standing(place.name, place.path, null, bad.messages());
    }
  }

  private @Nullable Stamp stamp(Path path) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
      return new Stamp(
          attributes.lastModifiedTime().toMillis(), attributes.size(), LocalDate.now(clock));
    } catch (IOException gone) {
      return null;
    }
  }

  private String uniqueName(Path file) {
    Path last = file.getFileName();
    String base =
        (last == null ? "site" : last.toString())
            .replaceFirst("(\\.site)?\\.ya?ml$", "")
            .replaceAll("[^A-Za-z0-9_-]+", "-");
    String name = base;
    for (int number = 2; places.containsKey(name); number++) {
      name = base + "-" + number;
    }
    return name;
  }
}
