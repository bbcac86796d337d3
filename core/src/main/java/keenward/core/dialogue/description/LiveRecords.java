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

  private LiveRecords(PanelDescription description) {
    this.description = description;
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
    screen.entry().ifPresent(entry -> references(entry).forEach(field -> use(field, grown)));
    screen.lines().forEach(line -> use(line, grown));
    screen.elsewhere().values().forEach(lines -> lines.forEach(line -> use(line, grown)));
    Optional<Action> chosen = Optional.empty();
    String record = "";
    if (screen.entry().isPresent()
        && screen.entry().get() instanceof Entry.Typed typed
        && typed.target() instanceof Target.ToRecord to) {
      chosen = Optional.of(typed.then());
      record = to.record();
    }
    Optional<Action> choosing = chosen;
    String chosenRecord = record;
    Actions.forEach(
        screen,
        action -> {
          Set<String> before = new TreeSet<>();
          action.branches().forEach(branch -> before.addAll(before(screen, branch)));
          if (choosing.filter(action::equals).isPresent()) {
            before.remove(chosenRecord);
          }
          grown.addAll(before);
        });
    return grown;
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
    Map<String, Set<String>> kinds = new HashMap<>();
    for (Location location : description.locations()) {
      kinds
          .computeIfAbsent(location.screen(), any -> new TreeSet<>())
          .add(record(location.field()));
    }
    kinds.forEach((screen, chosen) -> {
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

  private static List<FieldReference> references(Entry entry) {
    return switch (entry) {
      case Entry.Typed typed -> reference(typed.target());
      case Entry.Coded coded -> reference(coded.target());
      case Entry.Scroll scroll -> List.of(scroll.field());
      case Entry.Menu menu -> List.of();
      case Entry.ToggleByCode toggle -> List.of(toggle.field());
      case Entry.ToggleByCursor toggle -> List.of(toggle.field());
      case Entry.Lettered lettered -> List.of(lettered.field());
      case Entry.WordByNumber words -> List.of(words.field());
      case Entry.WordByScroll words -> List.of(words.field());
      case Entry.Hear hear -> {
        List<FieldReference> fields = new ArrayList<>(List.of(hear.serial()));
        hear.part().ifPresent(fields::add);
        yield fields;
      }
    };
  }

  private static List<FieldReference> reference(Target target) {
    return switch (target) {
      case Target.ToField to -> List.of(to.field());
      case Target.Repeat to -> List.of(to.field());
      case Target.Check to -> List.of(to.field());
      case Target.ToRecord to -> List.of();
      case Target.ToLocation to -> List.of();
      case Target.Aside to -> List.of();
      case Target.ToItem to -> List.of();
    };
  }
}
