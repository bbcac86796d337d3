package keenward.core.dialogue.description;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * For each screen, the kinds of record whose current number may still be shown or decide something
 * before another one is chosen. States that differ in the others only are alike: without that, a
 * dialogue with chapters about several kinds of record would have to be tried out with every
 * combination of their numbers.
 */
public final class LiveRecords {
  private final PanelDescription description;
  private final Map<String, Set<String>> live = new HashMap<>();

  /** By screen, the kinds of record of the locations that it shows. */
  private final Map<String, Set<String>> kindsAtLocations = new HashMap<>();

  private LiveRecords(PanelDescription description) {
    this.description = description;
    for (Location location : description.locations()) {
      kindsAtLocations
          .computeIfAbsent(location.screen(), any -> new TreeSet<>())
          .add(record(location.field()));
    }
  }

  /** Names of the live kinds of record by screen. */
  public static Map<String, Set<String>> of(PanelDescription description) {
    LiveRecords records = new LiveRecords(description);
    description.screens().keySet().forEach(name -> records.live.put(name, new TreeSet<>()));
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Screen screen : description.screens().values()) {
        changed |= records.at(screen.name()).addAll(records.grown(screen));
      }
    }
    return records.live;
  }

  private Set<String> at(String screen) {
    return live.computeIfAbsent(screen, any -> new TreeSet<>());
  }

  private Set<String> grown(Screen screen) {
    Set<String> grown = new TreeSet<>();
    screen.entry().ifPresent(entry -> use(entry, grown));
    screen.lines().forEach(line -> use(line, grown));
    screen.elsewhere().values().forEach(lines -> lines.forEach(line -> use(line, grown)));
    Actions.forEach(
        screen,
        action -> {
          Set<String> before = new TreeSet<>();
          action.branches().forEach(branch -> before.addAll(before(screen, branch)));
          chosenBefore(screen, action).ifPresent(before::remove);
          grown.addAll(before);
        });
    return grown;
  }

  /** The kind of record that is always chosen anew on the way to an action. */
  private static Optional<String> chosenBefore(Screen screen, Action action) {
    if (screen.entry().isPresent()
        && screen.entry().get() instanceof Entry.Typed typed
        && typed.target() instanceof Target.ToRecord to
        && typed.then().equals(action)
        // Confirming nothing may lead to the same place, with the record as it was.
        && typed.empty().filter(action::equals).isEmpty()
        && typed.wrong().filter(action::equals).isEmpty()
        && !screen.keys().containsValue(action)) {
      return Optional.of(to.record());
    }
    return Optional.empty();
  }

  /** What is live before a branch is taken. */
  private Set<String> before(Screen screen, Action.Branch branch) {
    Set<String> records = new TreeSet<>();
    switch (branch.destination()) {
      case Destination.ToScreen to -> records.addAll(at(to.screen()));
      case Destination.Stay stay -> records.addAll(at(screen.name()));
      case Destination.ToLocation to -> addLocations(records);
      case Destination.ToNeighbour to -> addLocations(records);
      case Destination.Leave leave -> {
        // Leaving makes the first record of each kind the current one.
      }
    }
    List<Effect> effects = new ArrayList<>(branch.effects());
    for (int last = effects.size() - 1; last >= 0; last--) {
      switch (effects.get(last)) {
        case Effect.ChooseRecord choose -> records.remove(choose.record());
        case Effect.ChooseOther choose -> records.remove(choose.record());
        case Effect.MoveRecord move -> records.add(move.record());
        case Effect.ResetRecord reset -> records.add(reset.record());
        case Effect.Set set -> use(set.field(), records);
        case Effect.Reset reset -> use(reset.field(), records);
        default -> {
          // Is about no record.
        }
      }
    }
    use(branch.when(), records);
    return records;
  }

  /** Going to a location chooses the record that it belongs to. */
  private void addLocations(Set<String> records) {
    kindsAtLocations.forEach((screen, chosen) -> {
      for (String kind : at(screen)) {
        if (chosen.size() > 1 || !chosen.contains(kind)) {
          records.add(kind);
        }
      }
    });
  }

  private String record(String field) {
    return description.findField(field).map(Field::record).orElse("");
  }

  private void use(Entry entry, Set<String> records) {
    entry.stores().forEach(field -> use(field, records));
    Optional<Target> target =
        switch (entry) {
          case Entry.Typed typed -> Optional.of(typed.target());
          case Entry.Coded coded -> Optional.of(coded.target());
          default -> Optional.empty();
        };
    if (target.isPresent() && target.get() instanceof Target.Check check) {
      use(check.field(), records);
    }
  }

  private void use(FieldReference reference, Set<String> records) {
    if (reference instanceof FieldReference.Named named && !record(named.field()).isEmpty()) {
      records.add(record(named.field()));
    }
  }

  private void use(Template line, Set<String> records) {
    for (Template.Part part : line.parts()) {
      switch (part) {
        case Template.FieldText text -> use(text.field(), records);
        case Template.TypedText text -> text.otherwise().ifPresent(field -> use(field, records));
        case Template.RecordNumber number -> records.add(number.record());
        default -> {
          // Shows nothing of a record.
        }
      }
    }
  }

  private void use(Condition condition, Set<String> records) {
    switch (condition) {
      case Condition.FieldIs is -> use(is.field(), records);
      case Condition.RecordIs is -> records.add(is.record());
      case Condition.Not not -> use(not.condition(), records);
      case Condition.All all -> all.conditions().forEach(part -> use(part, records));
      case Condition.Any any -> any.conditions().forEach(part -> use(part, records));
      default -> {
        // Asks about no record.
      }
    }
  }
}
