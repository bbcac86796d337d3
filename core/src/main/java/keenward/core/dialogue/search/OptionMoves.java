package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;

/** Moves on a screen where options of a set are switched. */
final class OptionMoves {
  private final Moves moves;

  OptionMoves(Moves moves) {
    this.moves = moves;
  }

  /** How to switch one option after another. */
  private interface Way {
    /** Keys for switching the options at these places, if there are any. */
    Optional<List<String>> keys(List<Integer> places);

    /** The instructions for switching whichever of these options is wrong. */
    Optional<List<Instruction.Switch>> switches(FieldType.OptionSet set, long wanted);
  }

  void find(Entry.ToggleByCode entry) {
    set(entry.field())
        .ifPresent(
            set -> find(entry.field(), entry.confirm(), entry.atOnce(), set, byCode(entry, set)));
  }

  void find(Entry.ToggleByCursor entry) {
    set(entry.field())
        .ifPresent(set ->
            find(entry.field(), entry.confirm(), false, set, new CursorWay(moves, entry, set)));
  }

  private Optional<FieldType.OptionSet> set(FieldReference field) {
    return moves
        .interpreter()
        .slot(moves.state, field)
        .map(slot -> slot.field().type())
        .filter(FieldType.OptionSet.class::isInstance)
        .map(FieldType.OptionSet.class::cast);
  }

  private void find(
      FieldReference field, String confirm, boolean atOnce, FieldType.OptionSet set, Way way) {
    if (moves.reaches(confirm)) {
      moves.add(from -> moves.start(from).press(confirm));
    }
    Slot slot = moves.interpreter().slot(moves.state, field).orElseThrow();
    Value held = moves.state.working().get(slot);
    if (!held.known()) {
      if (moves.task.wanted.get(slot) instanceof Value.Members wanted) {
        unknown(slot, confirm, set, way, wanted);
      }
      return;
    }
    long bits = held instanceof Value.Members members ? members.bits() : 0;
    for (Value value : moves.useful(slot)) {
      if (value instanceof Value.Members wanted && wanted.bits() != bits) {
        way.keys(places(bits ^ wanted.bits(), set.options().size()))
            .ifPresent(keys -> {
              if (atOnce) {
                moves.add(from -> moves.start(from).press(keys));
              }
              moves.addFinished(from -> moves.start(from).press(keys), confirm);
            });
      }
    }
  }

  private static List<Integer> places(long bits, int size) {
    List<Integer> places = new ArrayList<>();
    for (int place = 0; place < size; place++) {
      if (((bits >>> place) & 1L) != 0) {
        places.add(place);
      }
    }
    return places;
  }

  // A value that is not known

  private void unknown(
      Slot slot, String confirm, FieldType.OptionSet set, Way way, Value.Members wanted) {
    if (!moves.task.shows(moves.state, slot)) {
      moves.task.notice(slot, Reasons.notShown(slot));
      return;
    }
    Optional<List<Instruction.Switch>> switches = way.switches(set, wanted.bits());
    if (switches.isEmpty() || !moves.reaches(confirm)) {
      return;
    }
    List<String> all = keys(switches.get(), true);
    List<String> none = keys(switches.get(), false);
    long mask = set.options().size() == 64 ? -1L : (1L << set.options().size()) - 1;
    State right = moves.interpreter().assume(moves.state, slot, wanted);
    State wrong =
        moves.interpreter().assume(moves.state, slot, new Value.Members(wanted.bits() ^ mask));
    List<Completion.Leaf> leaves = new ArrayList<>();
    leaves.addAll(moves.completion.of(wrong, from -> moves.start(from).press(all).press(confirm)));
    int whenWrong = leaves.size();
    leaves.addAll(moves.completion.of(right, from -> moves.start(from).press(none).press(confirm)));
    for (Completion.Leaf leaf : leaves) {
      if (!leaf.run().alive() || !moves.allowed(leaf.run())) {
        return;
      }
    }
    if (whenWrong == 0 || whenWrong == leaves.size()) {
      return;
    }
    Optional<Edge> joined = moves.joined(moves.state, leaves);
    if (joined.isEmpty()) {
      return;
    }
    State reached = moves.start(wrong).press(all).state();
    Run longest = leaves.get(0).run();
    moves.addEdge(
        new Edge(
            List.of(
                new Item.Switching(moves.state, slot, wanted, switches.get(), reached),
                new Item.Do(
                    reached,
                    longest.from(),
                    List.of(new Act.Press(confirm, 1, 0, "")),
                    longest.stored(),
                    joined.get().after())),
            joined.get().after(),
            longest.cost()));
  }

  private static List<String> keys(List<Instruction.Switch> switches, boolean toggling) {
    List<String> keys = new ArrayList<>();
    for (Instruction.Switch one : switches) {
      for (Act first : one.first()) {
        if (first instanceof Act.Press press) {
          keys.add(press.key());
        }
      }
      if (toggling && one.toggle() instanceof Act.Press press) {
        keys.add(press.key());
      }
    }
    return keys;
  }

  private Way byCode(Entry.ToggleByCode entry, FieldType.OptionSet set) {
    return new Way() {
      @Override
      public Optional<List<String>> keys(List<Integer> places) {
        List<String> keys = new ArrayList<>();
        for (int place : places) {
          Optional<String> key = key(entry, set.options().get(place).code());
          if (key.isEmpty()) {
            return Optional.empty();
          }
          keys.add(key.get());
        }
        return Optional.of(keys);
      }

      @Override
      public Optional<List<Instruction.Switch>> switches(FieldType.OptionSet options, long wanted) {
        List<Instruction.Switch> switches = new ArrayList<>();
        for (int place = 0; place < options.options().size(); place++) {
          FieldType.Option option = options.options().get(place);
          Optional<String> key = key(entry, option.code());
          if (key.isEmpty()) {
            return Optional.empty();
          }
          switches.add(
              new Instruction.Switch(
                  place,
                  option.shown(),
                  ((wanted >>> place) & 1L) != 0,
                  List.of(),
                  new Act.Press(key.get(), 1, 0, "")));
        }
        return Optional.of(switches);
      }
    };
  }

  private Optional<String> key(Entry.ToggleByCode entry, String code) {
    for (Map.Entry<String, String> meaning :
        moves.task.description.keyMeanings().direct().entrySet()) {
      if (meaning.getValue().equals(code)
          && moves.reaches(meaning.getKey())
          && !meaning.getKey().equals(entry.confirm())) {
        return Optional.of(meaning.getKey());
      }
    }
    return Optional.empty();
  }

  /** Switching by moving to each option and pressing a key. */
  private record CursorWay(Moves moves, Entry.ToggleByCursor entry, FieldType.OptionSet set)
      implements Way {

    @Override
    public Optional<List<String>> keys(List<Integer> places) {
      if (!moves.reaches(entry.toggle())) {
        return Optional.empty();
      }
      Optional<List<String>> best = Optional.empty();
      for (int split = 0; split <= places.size(); split++) {
        // Some options on the way onward, the others on the way back, whichever comes first.
        List<Integer> onward = places.subList(0, split);
        List<Integer> back = places.subList(split, places.size()).reversed();
        for (List<List<Integer>> legs : List.of(List.of(onward, back), List.of(back, onward))) {
          Optional<List<String>> keys = walk(legs);
          if (keys.isPresent() && (best.isEmpty() || keys.get().size() < best.get().size())) {
            best = keys;
          }
        }
      }
      return best;
    }

    private Optional<List<String>> walk(List<List<Integer>> legs) {
      List<String> keys = new ArrayList<>();
      int cursor = 0;
      for (List<Integer> leg : legs) {
        for (int place : leg) {
          Optional<List<String>> way = way(cursor, place);
          if (way.isEmpty()) {
            return Optional.empty();
          }
          keys.addAll(way.get());
          keys.add(entry.toggle());
          cursor = place;
        }
      }
      return Optional.of(keys);
    }

    private Optional<List<String>> way(int from, int to) {
      return Cursor.way(
          from,
          to,
          set.options().size(),
          entry.wraps(),
          entry.next(),
          entry.previous(),
          moves::reaches);
    }

    @Override
    public Optional<List<Instruction.Switch>> switches(FieldType.OptionSet options, long wanted) {
      List<Instruction.Switch> switches = new ArrayList<>();
      for (int place = 0; place < options.options().size(); place++) {
        List<Act> first = place == 0 ? List.of() : List.of(new Act.Press(entry.next(), 1, 0, ""));
        switches.add(
            new Instruction.Switch(
                place,
                options.options().get(place).shown(),
                ((wanted >>> place) & 1L) != 0,
                first,
                new Act.Press(entry.toggle(), 1, 0, "")));
      }
      return moves.reaches(entry.toggle())
              && (options.options().size() < 2 || moves.reaches(entry.next()))
          ? Optional.of(switches)
          : Optional.empty();
    }
  }
}
