package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;

/**
 * The screens and what leads from one to another at the least, whatever the memory holds. Distances
 * here are lower bounds of real ones: conditions are taken to hold, and what is entered is as short
 * as can be.
 */
final class ScreenGraph {
  private final PanelDescription description;
  private final KeypadKind keypad;
  private final boolean powerWindow;
  private final Map<String, Integer> indices = new LinkedHashMap<>();
  private final List<String> names;
  private final long[][] distance;
  private final Map<String, List<Lead>> recordChanges = new HashMap<>();
  private final long[] leaving;
  private final Map<Integer, Set<Integer>> afterEntering = new HashMap<>();
  private final Map<String, long[][]> viaRecord = new HashMap<>();
  private final Map<String, RecordTurns> turns = new HashMap<>();

  /** A way from one screen to another. */
  private record Lead(int from, int to, long cost) {}

  /** Where an action may lead, and what it does on the way. */
  private record Landing(
      String screen, Set<String> changesRecords, boolean stores, boolean leaves) {}

  ScreenGraph(PanelDescription description, KeypadKind keypad, boolean powerWindow) {
    this.description = description;
    this.keypad = keypad;
    this.powerWindow = powerWindow;
    for (String name : description.screens().keySet()) {
      indices.put(name, indices.size());
    }
    this.names = List.copyOf(indices.keySet());
    this.distance = new long[names.size()][names.size()];
    this.leaving = new long[names.size()];
    Arrays.fill(leaving, Cost.NEVER);
    for (int from = 0; from < names.size(); from++) {
      Arrays.fill(distance[from], Cost.NEVER);
      distance[from][from] = 0;
    }
    for (Screen screen : description.screens().values()) {
      if (screen.decide().isEmpty()) {
        leads(screen);
      }
    }
    close();
  }

  int index(String screen) {
    Integer index = indices.get(screen);
    if (index == null) {
      throw new IllegalArgumentException("no screen " + screen);
    }
    return index;
  }

  String name(int index) {
    return names.get(index);
  }

  /** At least this much from one screen to another. */
  long distance(int from, int to) {
    return distance[from][to];
  }

  /**
   * At least this much from one screen to another when another record of the kind has to be chosen:
   * the way over one change of the record, or as many changes as it takes and the way from the last
   * of them, whichever is more.
   *
   * @param before number of the current record
   * @param after number of the record that has to be the current one
   */
  long distanceChoosing(String kind, int from, int to, int before, int after) {
    long once = viaRecord.computeIfAbsent(kind, this::via)[from][to];
    int changes =
        turns
            .computeIfAbsent(kind, name -> new RecordTurns(description, name))
            .least(before, after);
    if (changes < 2) {
      return once;
    }
    long cheapest = Cost.NEVER;
    long rest = Cost.NEVER;
    for (Lead change : recordChanges.getOrDefault(kind, List.of())) {
      cheapest = Math.min(cheapest, change.cost());
      rest = Math.min(rest, distance[change.to()][to]);
    }
    if (cheapest >= Cost.NEVER) {
      return once;
    }
    return Math.max(once, Cost.sum(cheapest * changes, rest));
  }

  /** At least this much from a screen until programming is left. */
  long leaving(int from) {
    return leaving[from];
  }

  /** Screens where one may be right after what is entered on a screen was stored. */
  Set<Integer> afterEntering(int screen) {
    return afterEntering.getOrDefault(screen, Set.of());
  }

  long cost(String key) {
    return Cost.of(1, keypad.lagTenths() + keypad.keys().getOrDefault(key, 0));
  }

  long keys(int count) {
    return Cost.of(count, count * keypad.lagTenths());
  }

  boolean has(String key) {
    return keypad.keys().containsKey(key);
  }

  private void leads(Screen screen) {
    int from = index(screen.name());
    screen
        .keys()
        .forEach((key, action) -> {
          if (has(key)) {
            lead(from, action, cost(key), false);
          }
        });
    screen.after().ifPresent(timed -> lead(from, timed.action(), Cost.of(1, 0), false));
    screen.entry().ifPresent(entry -> leads(from, entry));
    if (powerWindow && !screen.programming()) {
      add(new Lead(from, index(description.manners().powerLost().goesTo()), Cost.of(2, 0)));
    }
  }

  private void leads(int from, Entry entry) {
    switch (entry) {
      case Entry.Typed typed -> typed(from, typed);
      case Entry.Coded coded -> {
        long confirm = coded.confirm().isEmpty() ? 0 : cost(coded.confirm());
        boolean stores =
            coded.target() instanceof Target.ToField || coded.target() instanceof Target.Repeat;
        lead(from, coded.then(), keys(1) + confirm, stores);
        coded.empty().ifPresent(action -> confirm(from, coded.confirm(), action, false));
      }
      case Entry.Scroll scroll -> confirm(from, scroll.confirm(), scroll.then(), true);
      case Entry.Menu menu -> {
        if (has(menu.confirm())) {
          int size = menu.items().size();
          for (int item = 0; item < size; item++) {
            int moves = menu.wraps() ? Math.min(item, size - item) : item;
            lead(from, menu.items().get(item).action(), keys(moves) + cost(menu.confirm()), false);
          }
        }
      }
      case Entry.ToggleByCode toggle -> {
        afterEntering.computeIfAbsent(from, screen -> new LinkedHashSet<>()).add(from);
        confirm(from, toggle.confirm(), toggle.then(), true);
      }
      case Entry.ToggleByCursor toggle -> confirm(from, toggle.confirm(), toggle.then(), true);
      case Entry.Lettered lettered -> {
        confirm(from, lettered.confirm(), lettered.then(), true);
        lettered.empty().ifPresent(action -> confirm(from, lettered.confirm(), action, false));
      }
      case Entry.WordByNumber words -> {
        confirm(from, words.confirm(), words.then(), true);
        words.empty().ifPresent(action -> confirm(from, words.confirm(), action, false));
      }
      case Entry.WordByScroll words -> {
        confirm(from, words.confirm(), words.then(), true);
        words.empty().ifPresent(action -> confirm(from, words.confirm(), action, false));
      }
      case Entry.Hear hear -> {
        lead(from, hear.then(), Cost.of(1, 0), true);
        lead(from, hear.expired(), Cost.of(1, 0), false);
      }
    }
  }

  private void typed(int from, Entry.Typed typed) {
    int digits = Math.max(1, typed.least());
    long least = typed.advances() && digits == typed.most() ? keys(digits) : keys(digits + 1);
    if (typed.advances()) {
      least = Math.min(least, keys(typed.most()));
    }
    boolean stores =
        typed.target() instanceof Target.ToField || typed.target() instanceof Target.Repeat;
    if (typed.target() instanceof Target.ToItem items) {
      for (Action action : items.items().values()) {
        lead(from, action, least, false);
      }
    } else {
      Set<String> kinds = new HashSet<>();
      if (typed.target() instanceof Target.ToRecord to) {
        kinds.add(to.record());
      }
      if (typed.target() instanceof Target.ToLocation) {
        kinds.addAll(kindsAtLocations());
      }
      lead(from, typed.then(), least, stores, kinds);
    }
    long confirm = cost(typed.confirm());
    if (has(typed.confirm())) {
      typed.empty().ifPresent(action -> lead(from, action, confirm, false));
    }
  }

  private Set<String> kindsAtLocations() {
    Set<String> kinds = new HashSet<>();
    for (Location location : description.locations()) {
      description.findField(location.field()).map(Field::record).ifPresent(kinds::add);
    }
    return kinds;
  }

  private void confirm(int from, String key, Action action, boolean stores) {
    if (has(key)) {
      lead(from, action, cost(key), stores);
    }
  }

  private void lead(int from, Action action, long cost, boolean stores) {
    lead(from, action, cost, stores, Set.of());
  }

  private void lead(int from, Action action, long cost, boolean stores, Set<String> kinds) {
    for (Landing landing : landings(names.get(from), action, kinds, stores, new HashSet<>())) {
      int to = index(landing.screen());
      Lead lead = new Lead(from, to, cost);
      add(lead);
      for (String kind : landing.changesRecords()) {
        recordChanges.computeIfAbsent(kind, name -> new ArrayList<>()).add(lead);
      }
      if (landing.stores()) {
        afterEntering.computeIfAbsent(from, screen -> new LinkedHashSet<>()).add(to);
      }
      if (landing.leaves()) {
        leaving[from] = Math.min(leaving[from], cost);
      }
    }
  }

  private void add(Lead lead) {
    distance[lead.from()][lead.to()] = Math.min(distance[lead.from()][lead.to()], lead.cost());
  }

  private List<Landing> landings(
      String from, Action action, Set<String> kinds, boolean stores, Set<String> visited) {
    List<Landing> landings = new ArrayList<>();
    for (Action.Branch branch : action.branches()) {
      Set<String> changed = new HashSet<>(kinds);
      boolean storing = stores;
      for (Effect effect : branch.effects()) {
        storing |=
            effect instanceof Effect.Set
                || effect instanceof Effect.Reset
                || effect instanceof Effect.ResetRecord
                || effect instanceof Effect.ResetAll;
        switch (effect) {
          case Effect.MoveRecord move -> changed.add(move.record());
          case Effect.ChooseRecord choose -> changed.add(choose.record());
          case Effect.ChooseOther choose -> changed.add(choose.record());
          default -> {
            // The record stays the current one.
          }
        }
      }
      switch (branch.destination()) {
        case Destination.ToScreen to ->
            landings.addAll(land(to.screen(), changed, storing, visited));
        case Destination.Stay stay -> landings.addAll(land(from, changed, storing, visited));
        case Destination.ToLocation to -> landings.addAll(atLocations(changed, storing, visited));
        case Destination.ToNeighbour to -> {
          changed.addAll(kindsAtLocations());
          landings.addAll(atLocations(changed, storing, visited));
        }
        case Destination.Leave leave -> {
          Leaving way = description.leaving().get(leave.way());
          if (way != null && way.safe() && !way.locks()) {
            // Leaving makes the first record of every kind the current one.
            for (RecordKind kind : description.records()) {
              changed.add(kind.name());
            }
            landings.add(new Landing(way.goesTo(), changed, true, true));
          }
        }
      }
    }
    return landings;
  }

  private List<Landing> atLocations(Set<String> kinds, boolean stores, Set<String> visited) {
    Set<String> screens = new LinkedHashSet<>();
    for (Location location : description.locations()) {
      screens.add(location.screen());
    }
    List<Landing> landings = new ArrayList<>();
    for (String screen : screens) {
      landings.addAll(land(screen, kinds, stores, visited));
    }
    return landings;
  }

  private List<Landing> land(String name, Set<String> kinds, boolean stores, Set<String> visited) {
    Screen screen = description.screens().get(name);
    if (screen == null || screen.decide().isEmpty()) {
      return List.of(new Landing(name, kinds, stores, false));
    }
    if (!visited.add(name)) {
      return List.of();
    }
    List<Landing> landings = landings(name, screen.decide().get(), kinds, stores, visited);
    visited.remove(name);
    return landings;
  }

  /** Floyd and Warshall's all-pairs shortest paths. */
  private void close() {
    int size = names.size();
    for (int through = 0; through < size; through++) {
      for (int from = 0; from < size; from++) {
        long first = distance[from][through];
        if (first >= Cost.NEVER) {
          continue;
        }
        for (int to = 0; to < size; to++) {
          long sum = first + distance[through][to];
          if (sum < distance[from][to]) {
            distance[from][to] = sum;
          }
        }
      }
    }
    long[] direct = leaving.clone();
    for (int from = 0; from < size; from++) {
      for (int to = 0; to < size; to++) {
        leaving[from] = Math.min(leaving[from], Cost.sum(distance[from][to], direct[to]));
      }
    }
  }

  private long[][] via(String kind) {
    int size = names.size();
    long[][] via = new long[size][size];
    for (long[] row : via) {
      Arrays.fill(row, Cost.NEVER);
    }
    for (Lead change : recordChanges.getOrDefault(kind, List.of())) {
      for (int from = 0; from < size; from++) {
        long start = Cost.sum(distance[from][change.from()], change.cost());
        if (start >= Cost.NEVER) {
          continue;
        }
        for (int to = 0; to < size; to++) {
          via[from][to] = Math.min(via[from][to], Cost.sum(start, distance[change.to()][to]));
        }
      }
    }
    return via;
  }
}
