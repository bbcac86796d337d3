package keenward.core.building;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import keenward.core.plan.EdgeSelector;
import org.jspecify.annotations.Nullable;

/** Rooms and outside, joined by passages. Needs no drawing: names are enough. */
public final class RoomGraph {

  private final List<Passage> passages;
  private final Map<String, List<Passage>> byRoom = new LinkedHashMap<>();

  RoomGraph(List<String> rooms, List<Passage> passages) {
    this.passages = List.copyOf(passages);
    byRoom.put(EdgeSelector.OUTSIDE, new ArrayList<>());
    for (String room : rooms) {
      byRoom.put(room, new ArrayList<>());
    }
    for (Passage passage : passages) {
      of(passage.room()).add(passage);
      if (!passage.beyond().equals(passage.room())) {
        of(passage.beyond()).add(passage);
      }
    }
  }

  private List<Passage> of(String room) {
    return byRoom.computeIfAbsent(room, ignored -> new ArrayList<>());
  }

  /** Every passage, floor by floor in the order of the plan. */
  public List<Passage> passages() {
    return passages;
  }

  /** The passages of a room, or of {@link EdgeSelector#OUTSIDE}. */
  public List<Passage> passagesOf(String room) {
    return Collections.unmodifiableList(byRoom.getOrDefault(room, List.of()));
  }

  /** The rooms that a passage joins to this one, each once. */
  public List<String> neighbours(String room) {
    return passagesOf(room).stream().map(passage -> passage.otherEnd(room)).distinct().toList();
  }

  /**
   * A route with the fewest passages; among equals the one whose passages come first in the plan.
   *
   * @param from a room, or outside
   * @param to a room, or outside
   * @param usable the passages that may be used, such as {@link Passage#isForWalking}
   */
  public Optional<Route> findRoute(String from, String to, Predicate<Passage> usable) {
    Map<String, @Nullable Passage> cameBy = new HashMap<>();
    cameBy.put(from, null);
    ArrayDeque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty() && !cameBy.containsKey(to)) {
      String room = open.remove();
      for (Passage passage : passagesOf(room)) {
        String next = passage.otherEnd(room);
        if (usable.test(passage) && !cameBy.containsKey(next)) {
          cameBy.put(next, passage);
          open.add(next);
        }
      }
    }
    if (!cameBy.containsKey(to) || !byRoom.containsKey(to)) {
      return Optional.empty();
    }
    List<String> rooms = new ArrayList<>(List.of(to));
    List<Passage> used = new ArrayList<>();
    String room = to;
    for (Passage by = cameBy.get(room); by != null; by = cameBy.get(room)) {
      room = by.otherEnd(room);
      rooms.addFirst(room);
      used.addFirst(by);
    }
    return Optional.of(new Route(rooms, used));
  }
}
